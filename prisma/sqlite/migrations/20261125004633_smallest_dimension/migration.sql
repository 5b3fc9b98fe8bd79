-- AlterTable
ALTER TABLE "Component" ADD COLUMN "smallestDimensionMm" REAL;
