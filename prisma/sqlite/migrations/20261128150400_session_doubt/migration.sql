-- AlterTable
ALTER TABLE "CheckStandard" ADD COLUMN "material" TEXT NOT NULL DEFAULT 'other';

-- AlterTable
ALTER TABLE "Session" ADD COLUMN "inDoubtReason" TEXT;
