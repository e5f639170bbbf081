-- CreateTable
CREATE TABLE "edit" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "by_id" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "kind" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "changes" JSONB NOT NULL,
    "takes_back_id" UUID,

    CONSTRAINT "edit_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "edit_company_id_production_id_at_idx" ON "edit"("company_id", "production_id", "at");

-- CreateIndex
CREATE INDEX "edit_company_id_by_id_idx" ON "edit"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "edit_company_id_id_key" ON "edit"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "edit_company_id_takes_back_id_key" ON "edit"("company_id", "takes_back_id");

-- AddForeignKey
ALTER TABLE "edit" ADD CONSTRAINT "edit_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edit" ADD CONSTRAINT "edit_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "edit" ADD CONSTRAINT "edit_company_id_takes_back_id_fkey" FOREIGN KEY ("company_id", "takes_back_id") REFERENCES "edit"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Checks

ALTER TABLE "edit" ADD CONSTRAINT "edit_kind_check" CHECK ("kind" IN ('do', 'undo', 'redo') AND ("kind" = 'do') = ("takes_back_id" IS NULL));
ALTER TABLE "edit" ADD CONSTRAINT "edit_title_check" CHECK ("title" <> '');
ALTER TABLE "edit" ADD CONSTRAINT "edit_changes_check" CHECK (jsonb_typeof("changes") = 'array' AND "changes" <> '[]');
