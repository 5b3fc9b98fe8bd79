-- CreateTable
CREATE TABLE "StartedRevision" (
    "itemId" TEXT NOT NULL PRIMARY KEY,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "startedById" TEXT NOT NULL,
    "startedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);
