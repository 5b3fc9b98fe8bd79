-- AlterTable
ALTER TABLE "Specimen" ADD COLUMN "madeOn" TEXT;
