-- AlterTable
ALTER TABLE "Photo" ADD COLUMN "createdAt" DATETIME;
ALTER TABLE "Photo" ADD COLUMN "createdById" TEXT;
ALTER TABLE "Photo" ADD COLUMN "originalKey" TEXT;
ALTER TABLE "Photo" ADD COLUMN "originalName" TEXT;
ALTER TABLE "Photo" ADD COLUMN "removedAt" DATETIME;
ALTER TABLE "Photo" ADD COLUMN "scaleMm" REAL;
ALTER TABLE "Photo" ADD COLUMN "scaleX1" REAL;
ALTER TABLE "Photo" ADD COLUMN "scaleX2" REAL;
ALTER TABLE "Photo" ADD COLUMN "scaleY1" REAL;
ALTER TABLE "Photo" ADD COLUMN "scaleY2" REAL;

-- AlterTable
ALTER TABLE "Reading" ADD COLUMN "retestId" TEXT;

-- CreateTable
CREATE TABLE "OtherTest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "specimenId" TEXT NOT NULL,
    "componentId" TEXT,
    "kind" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "valueText" TEXT NOT NULL,
    "value" REAL,
    "reportingLimit" REAL,
    "unit" TEXT NOT NULL,
    "u" REAL,
    "sampleAreaCm2" REAL,
    "blankText" TEXT,
    "laboratory" TEXT NOT NULL DEFAULT '',
    "method" TEXT NOT NULL DEFAULT '',
    "reportedOn" TEXT,
    "certificateKey" TEXT,
    "certificateName" TEXT,
    "note" TEXT NOT NULL DEFAULT '',
    "createdById" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "removedAt" DATETIME,
    CONSTRAINT "OtherTest_specimenId_fkey" FOREIGN KEY ("specimenId") REFERENCES "Specimen" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "OtherTest_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenSha256" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "createdById" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expiresAt" DATETIME NOT NULL,
    "usedAt" DATETIME
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "at" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorId" TEXT,
    "actorName" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "record" TEXT NOT NULL,
    "recordId" TEXT NOT NULL,
    "itemId" TEXT,
    "detail" TEXT NOT NULL DEFAULT '{}'
);

-- CreateTable
CREATE TABLE "SentOnce" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "userId" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "RateBucket" (
    "key" TEXT NOT NULL PRIMARY KEY,
    "count" INTEGER NOT NULL,
    "resetAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "ReviewClaim" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "reviewerId" TEXT NOT NULL,
    "interests" TEXT NOT NULL DEFAULT '',
    "claimedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "ReviewClaim_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "ReviewClaim_reviewerId_fkey" FOREIGN KEY ("reviewerId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ReviewComment" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "authorId" TEXT NOT NULL,
    "about" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "replyToId" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "settledAt" DATETIME,
    "settledById" TEXT,
    CONSTRAINT "ReviewComment_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ReviewComment_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Retest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "componentId" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "askedById" TEXT NOT NULL,
    "testerId" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "state" TEXT NOT NULL DEFAULT 'asked',
    "firstValue" TEXT NOT NULL,
    "secondValue" TEXT,
    "askedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "doneAt" DATETIME,
    CONSTRAINT "Retest_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "MakerAnswer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "receivedOn" TEXT NOT NULL,
    "fromWhom" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "addedById" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "MakerAnswer_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "LogHead" (
    "seq" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "hash" TEXT NOT NULL,
    "signedAt" TEXT NOT NULL,
    "publicKey" TEXT NOT NULL,
    "signature" TEXT NOT NULL
);

-- Columns are added one by one: recreating a table would drop its triggers, and its children with it.
ALTER TABLE "CheckStandard" ADD COLUMN "otherNames" TEXT NOT NULL DEFAULT '[]';
ALTER TABLE "CheckStandard" ADD COLUMN "modes" TEXT NOT NULL DEFAULT '[]';
ALTER TABLE "CheckStandard" ADD COLUMN "certificateKey" TEXT;
ALTER TABLE "CheckStandard" ADD COLUMN "certificateName" TEXT;
ALTER TABLE "CheckStandard" ADD COLUMN "retiredAt" DATETIME;
ALTER TABLE "Instrument" ADD COLUMN "errorKByMode" TEXT NOT NULL DEFAULT '{}';
ALTER TABLE "Instrument" ADD COLUMN "calibratedRanges" TEXT NOT NULL DEFAULT '[]';
ALTER TABLE "Item" ADD COLUMN "interests" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Item" ADD COLUMN "submittedById" TEXT;
ALTER TABLE "Item" ADD COLUMN "submittedAt" DATETIME;
ALTER TABLE "Registry" ADD COLUMN "approvalsNeeded" INTEGER NOT NULL DEFAULT 1;
ALTER TABLE "Registry" ADD COLUMN "rightOfReply" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Review" ADD COLUMN "interests" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Session" ADD COLUMN "operatorName" TEXT;
ALTER TABLE "Session" ADD COLUMN "trained" BOOLEAN NOT NULL DEFAULT false;
ALTER TABLE "Session" ADD COLUMN "clockShiftMinutes" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "Session" ADD COLUMN "corrections" TEXT NOT NULL DEFAULT '[]';
ALTER TABLE "Session" ADD COLUMN "note" TEXT NOT NULL DEFAULT '';
ALTER TABLE "Session" ADD COLUMN "createdById" TEXT;
ALTER TABLE "Session" ADD COLUMN "createdAt" DATETIME;
ALTER TABLE "Spot" ADD COLUMN "position" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "TestRequest" ADD COLUMN "wordsKey" TEXT NOT NULL DEFAULT '';
ALTER TABLE "TestRequest" ADD COLUMN "state" TEXT NOT NULL DEFAULT 'open';
ALTER TABLE "TestRequest" ADD COLUMN "itemId" TEXT;
ALTER TABLE "TestRequest" ADD COLUMN "photoKey" TEXT;
ALTER TABLE "TestRequest" ADD COLUMN "answeredAt" DATETIME;
CREATE INDEX "TestRequest_wordsKey_idx" ON "TestRequest"("wordsKey");

-- What happened stays written.
CREATE TRIGGER "AuditEntry_no_update" BEFORE UPDATE ON "AuditEntry" BEGIN SELECT RAISE(ABORT, 'AuditEntry is kept as it was written'); END;
CREATE TRIGGER "AuditEntry_no_delete" BEFORE DELETE ON "AuditEntry" BEGIN SELECT RAISE(ABORT, 'AuditEntry is kept as it was written'); END;
CREATE TRIGGER "LogHead_no_update" BEFORE UPDATE ON "LogHead" BEGIN SELECT RAISE(ABORT, 'LogHead is kept as it was written'); END;
CREATE TRIGGER "LogHead_no_delete" BEFORE DELETE ON "LogHead" BEGIN SELECT RAISE(ABORT, 'LogHead is kept as it was written'); END;
-- CreateIndex
CREATE INDEX "AuditEntry_itemId_idx" ON "AuditEntry"("itemId");

-- CreateIndex
CREATE INDEX "AuditEntry_record_recordId_idx" ON "AuditEntry"("record", "recordId");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenSha256_key" ON "Invitation"("tokenSha256");

-- CreateIndex
CREATE INDEX "OtherTest_specimenId_idx" ON "OtherTest"("specimenId");

-- CreateIndex
CREATE INDEX "Retest_itemId_idx" ON "Retest"("itemId");

-- CreateIndex
CREATE INDEX "Retest_testerId_idx" ON "Retest"("testerId");

-- CreateIndex
CREATE UNIQUE INDEX "ReviewClaim_itemId_key" ON "ReviewClaim"("itemId");

-- CreateIndex
CREATE INDEX "ReviewComment_itemId_idx" ON "ReviewComment"("itemId");
