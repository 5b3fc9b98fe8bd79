-- CreateTable
CREATE TABLE "PhotoFile" (
    "photoId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,

    PRIMARY KEY ("photoId", "key"),
    CONSTRAINT "PhotoFile_photoId_fkey" FOREIGN KEY ("photoId") REFERENCES "Photo" ("id") ON DELETE CASCADE ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "PhotoFile_key_idx" ON "PhotoFile"("key");

-- Photos kept so far have one file.
INSERT INTO "PhotoFile" ("photoId", "key", "width", "height", "sha256")
SELECT "id", "fileKey", "width", "height", "sha256" FROM "Photo";
