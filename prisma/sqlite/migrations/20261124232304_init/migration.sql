-- CreateTable
CREATE TABLE "Item" (
    "id" TEXT NOT NULL PRIMARY KEY,
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
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Specimen" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "howGot" TEXT NOT NULL,
    "whoPaid" TEXT NOT NULL,
    "gotOn" TEXT,
    "dateCode" TEXT,
    "condition" TEXT,
    "custody" TEXT,
    "position" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Specimen_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Component" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "specimenId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "form" TEXT NOT NULL,
    "accessible" BOOLEAN NOT NULL DEFAULT true,
    "thicknessMm" REAL,
    "areaCm2" REAL,
    "massG" REAL,
    "position" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Component_specimenId_fkey" FOREIGN KEY ("specimenId") REFERENCES "Specimen" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Spot" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "componentId" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "photoId" TEXT,
    "x" REAL,
    "y" REAL,
    CONSTRAINT "Spot_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Spot_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Photo" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "fileKey" TEXT NOT NULL,
    "alt" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "Photo_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Instrument" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "serial" TEXT NOT NULL,
    "modes" TEXT NOT NULL DEFAULT '[]',
    "windowMm" REAL,
    "errorK" INTEGER,
    "calibrationRel" REAL,
    "timeZone" TEXT,
    "minimumSeconds" REAL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "instrumentId" TEXT NOT NULL,
    "operatorId" TEXT,
    "place" TEXT,
    "timeZone" TEXT NOT NULL,
    "startedAt" TEXT NOT NULL,
    "endedAt" TEXT,
    "conditions" TEXT,
    CONSTRAINT "Session_instrumentId_fkey" FOREIGN KEY ("instrumentId") REFERENCES "Instrument" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "CheckStandard" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "matrix" TEXT NOT NULL,
    "certified" TEXT NOT NULL,
    "certificate" TEXT,
    "expiresOn" TEXT
);

-- CreateTable
CREATE TABLE "CheckReading" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "readingId" TEXT NOT NULL,
    "checkStandardId" TEXT NOT NULL,
    "sessionId" TEXT,
    CONSTRAINT "CheckReading_readingId_fkey" FOREIGN KEY ("readingId") REFERENCES "Reading" ("id") ON DELETE CASCADE ON UPDATE CASCADE,
    CONSTRAINT "CheckReading_checkStandardId_fkey" FOREIGN KEY ("checkStandardId") REFERENCES "CheckStandard" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CheckReading_sessionId_fkey" FOREIGN KEY ("sessionId") REFERENCES "Session" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "RawFile" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "sha256" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "bytes" BLOB NOT NULL,
    "size" INTEGER NOT NULL,
    "receivedAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "RememberedMapping" (
    "headerFingerprint" TEXT NOT NULL PRIMARY KEY,
    "mapping" TEXT NOT NULL,
    "instrumentId" TEXT,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "ImportBatch" (
    "id" TEXT NOT NULL PRIMARY KEY,
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
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "importedAt" DATETIME,
    "undoneAt" DATETIME,
    CONSTRAINT "ImportBatch_rawFileId_fkey" FOREIGN KEY ("rawFileId") REFERENCES "RawFile" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ImportBatch_instrumentId_fkey" FOREIGN KEY ("instrumentId") REFERENCES "Instrument" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "ImportBatch_createdById_fkey" FOREIGN KEY ("createdById") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Reading" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "batchId" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "number" TEXT,
    "takenAtText" TEXT,
    "takenAt" TEXT,
    "takenOn" TEXT,
    "offsetMinutes" INTEGER,
    "secondsCounted" REAL,
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
    "asideAt" DATETIME,
    CONSTRAINT "Reading_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Reading_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Reading_spotId_fkey" FOREIGN KEY ("spotId") REFERENCES "Spot" ("id") ON DELETE SET NULL ON UPDATE CASCADE,
    CONSTRAINT "Reading_sessionId_fkey" FOREIGN KEY ("sessionId") REFERENCES "Session" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "SetAsideRow" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "batchId" TEXT NOT NULL,
    "row" INTEGER NOT NULL,
    "cells" TEXT NOT NULL,
    "problems" TEXT NOT NULL,
    "mended" TEXT,
    "mendedAt" DATETIME,
    "mendedById" TEXT,
    CONSTRAINT "SetAsideRow_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "ReportedValue" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "componentId" TEXT NOT NULL,
    "element" TEXT NOT NULL,
    "quantity" TEXT NOT NULL,
    "mode" TEXT NOT NULL DEFAULT '',
    "method" TEXT NOT NULL,
    "version" TEXT NOT NULL,
    "inputsDigest" TEXT NOT NULL,
    "result" TEXT NOT NULL,
    "computedAt" DATETIME NOT NULL,
    CONSTRAINT "ReportedValue_componentId_fkey" FOREIGN KEY ("componentId") REFERENCES "Component" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "User" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "role" TEXT NOT NULL DEFAULT 'tester',
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "AuthSession" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "expiresAt" DATETIME NOT NULL,
    "token" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "userId" TEXT NOT NULL,
    CONSTRAINT "AuthSession_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AuthAccount" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" DATETIME,
    "refreshTokenExpiresAt" DATETIME,
    "scope" TEXT,
    "password" TEXT,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL,
    CONSTRAINT "AuthAccount_userId_fkey" FOREIGN KEY ("userId") REFERENCES "User" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "AuthVerification" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" DATETIME NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "SetUpToken" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT DEFAULT 1,
    "tokenSha256" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP
);

-- CreateTable
CREATE TABLE "Publication" (
    "seq" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
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
    CONSTRAINT "Publication_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "PublicationSource" (
    "publicationSeq" INTEGER NOT NULL,
    "batchId" TEXT NOT NULL,

    PRIMARY KEY ("publicationSeq", "batchId"),
    CONSTRAINT "PublicationSource_publicationSeq_fkey" FOREIGN KEY ("publicationSeq") REFERENCES "Publication" ("seq") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "PublicationSource_batchId_fkey" FOREIGN KEY ("batchId") REFERENCES "ImportBatch" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Review" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "itemId" TEXT NOT NULL,
    "reviewerId" TEXT NOT NULL,
    "decision" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "inputsDigest" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    CONSTRAINT "Review_itemId_fkey" FOREIGN KEY ("itemId") REFERENCES "Item" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Review_reviewerId_fkey" FOREIGN KEY ("reviewerId") REFERENCES "User" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "TestRequest" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "description" TEXT NOT NULL,
    "count" INTEGER NOT NULL DEFAULT 1,
    "firstAt" DATETIME NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "lastAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "Registry" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT DEFAULT 1,
    "name" TEXT NOT NULL,
    "invented" BOOLEAN NOT NULL DEFAULT false,
    "licence" TEXT NOT NULL DEFAULT 'CC-BY-4.0',
    "contact" TEXT
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
CREATE UNIQUE INDEX "Publication_hash_key" ON "Publication"("hash");

-- CreateIndex
CREATE INDEX "Publication_itemId_idx" ON "Publication"("itemId");

-- CreateIndex
CREATE UNIQUE INDEX "Publication_slug_revision_key" ON "Publication"("slug", "revision");

-- CreateIndex
CREATE INDEX "Review_itemId_idx" ON "Review"("itemId");

-- CreateIndex
CREATE UNIQUE INDEX "TestRequest_description_key" ON "TestRequest"("description");
