-- CreateTable
CREATE TABLE "Item" (
    "id" TEXT NOT NULL,
    "slug" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "aliases" TEXT NOT NULL DEFAULT '[]',
    "marks" TEXT NOT NULL DEFAULT '',
    "maker" TEXT,
    "gtin" TEXT,
    "category" TEXT NOT NULL,
    "ageGroup" TEXT NOT NULL DEFAULT 'unknown',
    "foodContact" BOOLEAN NOT NULL DEFAULT false,
    "mouthable" BOOLEAN NOT NULL DEFAULT false,
    "description" TEXT NOT NULL DEFAULT '',
    "state" TEXT NOT NULL DEFAULT 'draft',
    "createdById" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,
    "interests" TEXT NOT NULL DEFAULT '',
    "submittedById" TEXT,
    "submittedAt" TIMESTAMP(3),

    CONSTRAINT "Item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Specimen" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "howGot" TEXT NOT NULL,
    "whoPaid" TEXT NOT NULL,
    "gotOn" TEXT,
    "dateCode" TEXT,
    "madeOn" TEXT,
    "condition" TEXT,
    "custody" TEXT,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Specimen_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Component" (
    "id" TEXT NOT NULL,
    "specimenId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "form" TEXT NOT NULL,
    "accessible" BOOLEAN NOT NULL DEFAULT true,
    "thicknessMm" DOUBLE PRECISION,
    "smallestDimensionMm" DOUBLE PRECISION,
    "areaCm2" DOUBLE PRECISION,
    "massG" DOUBLE PRECISION,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Component_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Spot" (
    "id" TEXT NOT NULL,
    "componentId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "photoId" TEXT,
    "x" DOUBLE PRECISION,
    "y" DOUBLE PRECISION,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "Spot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "fileKey" TEXT NOT NULL,
    "alt" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "originalKey" TEXT,
    "originalName" TEXT,
    "scaleX1" DOUBLE PRECISION,
    "scaleY1" DOUBLE PRECISION,
    "scaleX2" DOUBLE PRECISION,
    "scaleY2" DOUBLE PRECISION,
    "scaleMm" DOUBLE PRECISION,
    "createdById" TEXT,
    "createdAt" TIMESTAMP(3),
    "removedAt" TIMESTAMP(3),

    CONSTRAINT "Photo_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PhotoFile" (
    "photoId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,

    CONSTRAINT "PhotoFile_pkey" PRIMARY KEY ("photoId","key")
);

-- CreateTable
CREATE TABLE "OtherTest" (
    "id" TEXT NOT NULL,
    "specimenId" TEXT NOT NULL,
    "componentId" TEXT,
    "kind" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "valueText" TEXT NOT NULL,
    "value" DOUBLE PRECISION,
    "reportingLimit" DOUBLE PRECISION,
    "unit" TEXT NOT NULL,
    "u" DOUBLE PRECISION,
    "sampleAreaCm2" DOUBLE PRECISION,
    "blankText" TEXT,
    "laboratory" TEXT NOT NULL DEFAULT '',
    "method" TEXT NOT NULL DEFAULT '',
    "reportedOn" TEXT,
    "certificateKey" TEXT,
    "certificateName" TEXT,
    "note" TEXT NOT NULL DEFAULT '',
    "createdById" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "removedAt" TIMESTAMP(3),

    CONSTRAINT "OtherTest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Instrument" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "serial" TEXT NOT NULL,
    "modes" TEXT NOT NULL DEFAULT '[]',
    "windowMm" DOUBLE PRECISION,
    "errorK" INTEGER,
    "calibrationRel" DOUBLE PRECISION,
    "timeZone" TEXT,
    "minimumSeconds" DOUBLE PRECISION,
    "errorKByMode" TEXT NOT NULL DEFAULT '{}',
    "calibratedRanges" TEXT NOT NULL DEFAULT '[]',
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Instrument_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL,
    "instrumentId" TEXT NOT NULL,
    "operatorId" TEXT,
    "place" TEXT,
    "timeZone" TEXT NOT NULL,
    "startedAt" TEXT NOT NULL,
    "endedAt" TEXT,
    "conditions" TEXT,
    "operatorName" TEXT,
    "trained" BOOLEAN NOT NULL DEFAULT false,
    "clockShiftMinutes" INTEGER NOT NULL DEFAULT 0,
    "corrections" TEXT NOT NULL DEFAULT '[]',
    "inDoubtReason" TEXT,
    "note" TEXT NOT NULL DEFAULT '',
    "createdById" TEXT,
    "createdAt" TIMESTAMP(3),

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CheckStandard" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "matrix" TEXT NOT NULL,
    "material" TEXT NOT NULL DEFAULT 'other',
    "certified" TEXT NOT NULL,
    "certificate" TEXT,
    "expiresOn" TEXT,
    "otherNames" TEXT NOT NULL DEFAULT '[]',
    "modes" TEXT NOT NULL DEFAULT '[]',
    "certificateKey" TEXT,
    "certificateName" TEXT,
    "retiredAt" TIMESTAMP(3),

    CONSTRAINT "CheckStandard_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CheckReading" (
    "id" TEXT NOT NULL,
    "readingId" TEXT NOT NULL,
    "checkStandardId" TEXT NOT NULL,
    "sessionId" TEXT,

    CONSTRAINT "CheckReading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RawFile" (
    "id" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "bytes" BYTEA NOT NULL,
    "size" INTEGER NOT NULL,
    "receivedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "RawFile_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RememberedMapping" (
    "headerFingerprint" TEXT NOT NULL,
    "mapping" TEXT NOT NULL,
    "instrumentId" TEXT,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RememberedMapping_pkey" PRIMARY KEY ("headerFingerprint")
);

-- CreateTable
CREATE TABLE "ImportBatch" (
    "id" TEXT NOT NULL,
    "rawFileId" TEXT NOT NULL,
    "instrumentId" TEXT,
    "fileName" TEXT NOT NULL,
    "source" TEXT NOT NULL DEFAULT 'file',
    "state" TEXT NOT NULL DEFAULT 'uploaded',
    "mapping" TEXT,
    "columns" TEXT NOT NULL DEFAULT '[]',
    "rowsTotal" INTEGER NOT NULL DEFAULT 0,
    "rowsAccepted" INTEGER NOT NULL DEFAULT 0,
    "rowsSetAside" INTEGER NOT NULL DEFAULT 0,
    "rowsBlank" INTEGER NOT NULL DEFAULT 0,
    "rowsHeader" INTEGER NOT NULL DEFAULT 0,
    "createdById" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "importedAt" TIMESTAMP(3),
    "undoneAt" TIMESTAMP(3),

    CONSTRAINT "ImportBatch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Reading" (
    "id" TEXT NOT NULL,
    "batchId" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "number" TEXT,
    "takenAtText" TEXT,
    "takenAt" TEXT,
    "takenOn" TEXT,
    "offsetMinutes" INTEGER,
    "secondsCounted" DOUBLE PRECISION,
    "mode" TEXT,
    "sample" TEXT,
    "spotText" TEXT,
    "note" TEXT,
    "serial" TEXT,
    "operator" TEXT,
    "results" TEXT NOT NULL,
    "fingerprint" TEXT NOT NULL,
    "componentId" TEXT,
    "spotId" TEXT,
    "sessionId" TEXT,
    "asideReason" TEXT,
    "asideById" TEXT,
    "asideAt" TIMESTAMP(3),
    "retestId" TEXT,

    CONSTRAINT "Reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SetAsideRow" (
    "id" TEXT NOT NULL,
    "batchId" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "cells" TEXT NOT NULL,
    "problems" TEXT NOT NULL,
    "mended" TEXT,
    "mendedAt" TIMESTAMP(3),
    "mendedById" TEXT,

    CONSTRAINT "SetAsideRow_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ReportedValue" (
    "id" TEXT NOT NULL,
    "componentId" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "quantity" TEXT NOT NULL,
    "mode" TEXT NOT NULL DEFAULT '',
    "method" TEXT NOT NULL,
    "version" TEXT NOT NULL,
    "inputsDigest" TEXT NOT NULL,
    "result" TEXT NOT NULL,
    "computedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "ReportedValue_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "role" TEXT NOT NULL DEFAULT 'tester',
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "User_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AuthSession" (
    "id" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "token" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,

    CONSTRAINT "AuthSession_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AuthAccount" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMP(3),
    "refreshTokenExpiresAt" TIMESTAMP(3),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "AuthAccount_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AuthVerification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "AuthVerification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SetUpToken" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "tokenSha256" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "SetUpToken_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Invitation" (
    "id" TEXT NOT NULL,
    "tokenSha256" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "createdById" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expiresAt" TIMESTAMP(3) NOT NULL,
    "usedAt" TIMESTAMP(3),

    CONSTRAINT "Invitation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "AuditEntry" (
    "id" SERIAL NOT NULL,
    "at" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "actorId" TEXT,
    "actorName" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "record" TEXT NOT NULL,
    "recordId" TEXT NOT NULL,
    "itemId" TEXT,
    "detail" TEXT NOT NULL DEFAULT '{}',

    CONSTRAINT "AuditEntry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SentOnce" (
    "id" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "action" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "SentOnce_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "RateBucket" (
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "resetAt" TIMESTAMP(3) NOT NULL,

    CONSTRAINT "RateBucket_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "Publication" (
    "seq" INTEGER NOT NULL,
    "itemId" TEXT NOT NULL,
    "slug" TEXT NOT NULL,
    "revision" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "publishedAt" TEXT NOT NULL,
    "snapshot" TEXT NOT NULL,
    "snapshotSha256" TEXT NOT NULL,
    "previousHash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "publishedById" TEXT NOT NULL,

    CONSTRAINT "Publication_pkey" PRIMARY KEY ("seq")
);

-- CreateTable
CREATE TABLE "PublicationSource" (
    "publicationSeq" INTEGER NOT NULL,
    "batchId" TEXT NOT NULL,

    CONSTRAINT "PublicationSource_pkey" PRIMARY KEY ("publicationSeq","batchId")
);

-- CreateTable
CREATE TABLE "Review" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "reviewerId" TEXT NOT NULL,
    "decision" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "interests" TEXT NOT NULL DEFAULT '',
    "inputsDigest" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "Review_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TestRequest" (
    "id" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "count" INTEGER NOT NULL DEFAULT 1,
    "firstAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lastAt" TIMESTAMP(3) NOT NULL,
    "wordsKey" TEXT NOT NULL DEFAULT '',
    "state" TEXT NOT NULL DEFAULT 'open',
    "itemId" TEXT,
    "photoKey" TEXT,
    "answeredAt" TIMESTAMP(3),

    CONSTRAINT "TestRequest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Registry" (
    "id" INTEGER NOT NULL DEFAULT 1,
    "name" TEXT NOT NULL,
    "invented" BOOLEAN NOT NULL DEFAULT false,
    "licence" TEXT NOT NULL DEFAULT 'CC-BY-4.0',
    "contact" TEXT,
    "approvalsNeeded" INTEGER NOT NULL DEFAULT 1,
    "rightOfReply" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "Registry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ReviewClaim" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "reviewerId" TEXT NOT NULL,
    "interests" TEXT NOT NULL DEFAULT '',
    "claimedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "ReviewClaim_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ReviewComment" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "authorId" TEXT NOT NULL,
    "about" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "replyToId" TEXT,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "settledAt" TIMESTAMP(3),
    "settledById" TEXT,

    CONSTRAINT "ReviewComment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Retest" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "componentId" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "askedById" TEXT NOT NULL,
    "testerId" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "state" TEXT NOT NULL DEFAULT 'asked',
    "firstValue" TEXT NOT NULL,
    "secondValue" TEXT,
    "askedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "doneAt" TIMESTAMP(3),

    CONSTRAINT "Retest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MakerAnswer" (
    "id" TEXT NOT NULL,
    "itemId" TEXT NOT NULL,
    "receivedOn" TEXT NOT NULL,
    "fromWhom" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "addedById" TEXT NOT NULL,
    "createdAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "MakerAnswer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LogHead" (
    "seq" INTEGER NOT NULL,
    "hash" TEXT NOT NULL,
    "signedAt" TEXT NOT NULL,
    "publicKey" TEXT NOT NULL,
    "signature" TEXT NOT NULL,

    CONSTRAINT "LogHead_pkey" PRIMARY KEY ("seq")
);

-- CreateTable
CREATE TABLE "StartedRevision" (
    "itemId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "startedById" TEXT NOT NULL,
    "startedAt" TIMESTAMP(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "StartedRevision_pkey" PRIMARY KEY ("itemId")
);

-- CreateIndex
CREATE UNIQUE INDEX "Item_slug_key" ON "Item"("slug");

-- CreateIndex
CREATE INDEX "Specimen_itemId_idx" ON "Specimen"("itemId");

-- CreateIndex
CREATE INDEX "Component_specimenId_idx" ON "Component"("specimenId");

-- CreateIndex
CREATE UNIQUE INDEX "Spot_componentId_label_key" ON "Spot"("componentId", "label");

-- CreateIndex
CREATE INDEX "Photo_itemId_idx" ON "Photo"("itemId");

-- CreateIndex
CREATE INDEX "PhotoFile_key_idx" ON "PhotoFile"("key");

-- CreateIndex
CREATE INDEX "OtherTest_specimenId_idx" ON "OtherTest"("specimenId");

-- CreateIndex
CREATE UNIQUE INDEX "Instrument_serial_key" ON "Instrument"("serial");

-- CreateIndex
CREATE INDEX "Session_instrumentId_idx" ON "Session"("instrumentId");

-- CreateIndex
CREATE UNIQUE INDEX "CheckStandard_name_key" ON "CheckStandard"("name");

-- CreateIndex
CREATE UNIQUE INDEX "CheckReading_readingId_key" ON "CheckReading"("readingId");

-- CreateIndex
CREATE UNIQUE INDEX "RawFile_sha256_key" ON "RawFile"("sha256");

-- CreateIndex
CREATE INDEX "ImportBatch_rawFileId_idx" ON "ImportBatch"("rawFileId");

-- CreateIndex
CREATE INDEX "Reading_fingerprint_idx" ON "Reading"("fingerprint");

-- CreateIndex
CREATE INDEX "Reading_componentId_idx" ON "Reading"("componentId");

-- CreateIndex
CREATE INDEX "Reading_sample_idx" ON "Reading"("sample");

-- CreateIndex
CREATE UNIQUE INDEX "Reading_batchId_row_key" ON "Reading"("batchId", "row");

-- CreateIndex
CREATE UNIQUE INDEX "SetAsideRow_batchId_row_key" ON "SetAsideRow"("batchId", "row");

-- CreateIndex
CREATE UNIQUE INDEX "ReportedValue_componentId_element_quantity_mode_key" ON "ReportedValue"("componentId", "element", "quantity", "mode");

-- CreateIndex
CREATE UNIQUE INDEX "User_email_key" ON "User"("email");

-- CreateIndex
CREATE UNIQUE INDEX "AuthSession_token_key" ON "AuthSession"("token");

-- CreateIndex
CREATE INDEX "AuthSession_userId_idx" ON "AuthSession"("userId");

-- CreateIndex
CREATE INDEX "AuthAccount_userId_idx" ON "AuthAccount"("userId");

-- CreateIndex
CREATE INDEX "AuthVerification_identifier_idx" ON "AuthVerification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "Invitation_tokenSha256_key" ON "Invitation"("tokenSha256");

-- CreateIndex
CREATE INDEX "AuditEntry_itemId_idx" ON "AuditEntry"("itemId");

-- CreateIndex
CREATE INDEX "AuditEntry_record_recordId_idx" ON "AuditEntry"("record", "recordId");

-- CreateIndex
CREATE UNIQUE INDEX "Publication_hash_key" ON "Publication"("hash");

-- CreateIndex
CREATE INDEX "Publication_itemId_idx" ON "Publication"("itemId");

-- CreateIndex
CREATE UNIQUE INDEX "Publication_slug_revision_key" ON "Publication"("slug", "revision");

-- CreateIndex
CREATE INDEX "Review_itemId_idx" ON "Review"("itemId");

-- CreateIndex
CREATE UNIQUE INDEX "TestRequest_description_key" ON "TestRequest"("description");

-- CreateIndex
CREATE INDEX "TestRequest_wordsKey_idx" ON "TestRequest"("wordsKey");

-- CreateIndex
CREATE UNIQUE INDEX "ReviewClaim_itemId_key" ON "ReviewClaim"("itemId");

-- CreateIndex
CREATE INDEX "ReviewComment_itemId_idx" ON "ReviewComment"("itemId");

-- CreateIndex
CREATE INDEX "Retest_itemId_idx" ON "Retest"("itemId");

-- CreateIndex
CREATE INDEX "Retest_testerId_idx" ON "Retest"("testerId");

-- AddForeignKey
ALTER TABLE "Specimen" ADD CONSTRAINT "Specimen_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Component" ADD CONSTRAINT "Component_specimenId_fkey" FOREIGN KEY ("specimenId") REFERENCES "Specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Spot" ADD CONSTRAINT "Spot_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Spot" ADD CONSTRAINT "Spot_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Photo" ADD CONSTRAINT "Photo_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PhotoFile" ADD CONSTRAINT "PhotoFile_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OtherTest" ADD CONSTRAINT "OtherTest_specimenId_fkey" FOREIGN KEY ("specimenId") REFERENCES "Specimen"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OtherTest" ADD CONSTRAINT "OtherTest_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_instrumentId_fkey" FOREIGN KEY ("instrumentId") REFERENCES "Instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CheckReading" ADD CONSTRAINT "CheckReading_readingId_fkey" FOREIGN KEY ("readingId") REFERENCES "Reading"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CheckReading" ADD CONSTRAINT "CheckReading_checkStandardId_fkey" FOREIGN KEY ("checkStandardId") REFERENCES "CheckStandard"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CheckReading" ADD CONSTRAINT "CheckReading_sessionId_fkey" FOREIGN KEY ("sessionId") REFERENCES "Session"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ImportBatch" ADD CONSTRAINT "ImportBatch_rawFileId_fkey" FOREIGN KEY ("rawFileId") REFERENCES "RawFile"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ImportBatch" ADD CONSTRAINT "ImportBatch_instrumentId_fkey" FOREIGN KEY ("instrumentId") REFERENCES "Instrument"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ImportBatch" ADD CONSTRAINT "ImportBatch_createdById_fkey" FOREIGN KEY ("createdById") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_spotId_fkey" FOREIGN KEY ("spotId") REFERENCES "Spot"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Reading" ADD CONSTRAINT "Reading_sessionId_fkey" FOREIGN KEY ("sessionId") REFERENCES "Session"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "SetAsideRow" ADD CONSTRAINT "SetAsideRow_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReportedValue" ADD CONSTRAINT "ReportedValue_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AuthSession" ADD CONSTRAINT "AuthSession_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "AuthAccount" ADD CONSTRAINT "AuthAccount_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Publication" ADD CONSTRAINT "Publication_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PublicationSource" ADD CONSTRAINT "PublicationSource_publicationSeq_fkey" FOREIGN KEY ("publicationSeq") REFERENCES "Publication"("seq") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PublicationSource" ADD CONSTRAINT "PublicationSource_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Review" ADD CONSTRAINT "Review_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Review" ADD CONSTRAINT "Review_reviewerId_fkey" FOREIGN KEY ("reviewerId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReviewClaim" ADD CONSTRAINT "ReviewClaim_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReviewClaim" ADD CONSTRAINT "ReviewClaim_reviewerId_fkey" FOREIGN KEY ("reviewerId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReviewComment" ADD CONSTRAINT "ReviewComment_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReviewComment" ADD CONSTRAINT "ReviewComment_authorId_fkey" FOREIGN KEY ("authorId") REFERENCES "User"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Retest" ADD CONSTRAINT "Retest_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MakerAnswer" ADD CONSTRAINT "MakerAnswer_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
