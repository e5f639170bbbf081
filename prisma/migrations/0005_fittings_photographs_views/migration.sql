-- AlterTable
ALTER TABLE "file" ADD COLUMN     "caption" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "garment_number" TEXT,
ADD COLUMN     "height" INTEGER,
ADD COLUMN     "width" INTEGER;

-- AlterTable
ALTER TABLE "note" ADD COLUMN     "garment_number" TEXT;

-- CreateTable
CREATE TABLE "fitting_answer" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "performer_id" UUID NOT NULL,
    "by_id" TEXT,
    "garment_number" TEXT NOT NULL,
    "fitting" TEXT NOT NULL,
    "answer" TEXT NOT NULL,
    "on" DATE NOT NULL,
    "note" TEXT NOT NULL,
    "fit" BOOLEAN NOT NULL,
    "movement" BOOLEAN NOT NULL,
    "look" BOOLEAN NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "fitting_answer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fitting_mark" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "performer_id" UUID NOT NULL,
    "by_id" TEXT,
    "garment_number" TEXT NOT NULL,
    "fitting" TEXT NOT NULL,
    "place" TEXT NOT NULL,
    "finding" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "task" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "fitting_mark_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "saved_view" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "by_id" TEXT NOT NULL,
    "room" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "query" TEXT NOT NULL,
    "shared" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "saved_view_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "fitting_answer_company_id_production_id_garment_number_idx" ON "fitting_answer"("company_id", "production_id", "garment_number");

-- CreateIndex
CREATE INDEX "fitting_answer_company_id_performer_id_idx" ON "fitting_answer"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "fitting_answer_company_id_by_id_idx" ON "fitting_answer"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "fitting_answer_company_id_id_key" ON "fitting_answer"("company_id", "id");

-- CreateIndex
CREATE INDEX "fitting_mark_company_id_production_id_garment_number_idx" ON "fitting_mark"("company_id", "production_id", "garment_number");

-- CreateIndex
CREATE INDEX "fitting_mark_company_id_performer_id_idx" ON "fitting_mark"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "fitting_mark_company_id_by_id_idx" ON "fitting_mark"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "fitting_mark_company_id_id_key" ON "fitting_mark"("company_id", "id");

-- CreateIndex
CREATE INDEX "saved_view_company_id_by_id_idx" ON "saved_view"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "saved_view_company_id_id_key" ON "saved_view"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "saved_view_company_id_production_id_by_id_room_name_key" ON "saved_view"("company_id", "production_id", "by_id", "room", "name");

-- CreateIndex
CREATE INDEX "file_company_id_production_id_garment_number_idx" ON "file"("company_id", "production_id", "garment_number");

-- CreateIndex
CREATE INDEX "note_company_id_production_id_garment_number_idx" ON "note"("company_id", "production_id", "garment_number");

-- AddForeignKey
ALTER TABLE "fitting_answer" ADD CONSTRAINT "fitting_answer_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting_answer" ADD CONSTRAINT "fitting_answer_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting_answer" ADD CONSTRAINT "fitting_answer_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting_mark" ADD CONSTRAINT "fitting_mark_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting_mark" ADD CONSTRAINT "fitting_mark_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting_mark" ADD CONSTRAINT "fitting_mark_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema files cannot say.
ALTER TABLE "file" ADD CONSTRAINT "file_size_check" CHECK (("width" IS NULL) = ("height" IS NULL) AND "width" > 0 AND "height" > 0);
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_name_check" CHECK ("name" <> '' AND length("name") <= 60);
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_query_check" CHECK (length("query") <= 2000);
ALTER TABLE "fitting_answer" ADD CONSTRAINT "fitting_answer_answer_check" CHECK ("answer" IN ('done', 'did not come', 'again'));
ALTER TABLE "fitting_mark" ADD CONSTRAINT "fitting_mark_finding_check" CHECK ("finding" IN ('fits', 'alter', 'remake', 'note'));
