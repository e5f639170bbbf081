-- AlterTable
ALTER TABLE "task" ADD COLUMN     "asked_by" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "asked_on" DATE,
ADD COLUMN     "done_on" DATE,
ADD COLUMN     "due_id" UUID,
ADD COLUMN     "garment_number" TEXT,
ADD COLUMN     "gates" TEXT,
ADD COLUMN     "material_id" UUID,
ADD COLUMN     "position" INTEGER NOT NULL DEFAULT 0,
ADD COLUMN     "priority" INTEGER NOT NULL DEFAULT 2,
ADD COLUMN     "prototype_set_id" UUID,
ADD COLUMN     "set_id" UUID,
ADD COLUMN     "shown_for_id" UUID,
ADD COLUMN     "waits_for_id" UUID;

-- CreateTable
CREATE TABLE "approval" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "set_id" UUID,
    "material_id" UUID,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "by" TEXT NOT NULL,
    "days" INTEGER NOT NULL,
    "free_until" TEXT,
    "asked_on" DATE,
    "expected_on" DATE,
    "approved_on" DATE,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "approval_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "approval_company_id_set_id_idx" ON "approval"("company_id", "set_id");

-- CreateIndex
CREATE INDEX "approval_company_id_material_id_idx" ON "approval"("company_id", "material_id");

-- CreateIndex
CREATE UNIQUE INDEX "approval_company_id_id_key" ON "approval"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "approval_company_id_production_id_code_key" ON "approval"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "task_company_id_set_id_idx" ON "task"("company_id", "set_id");

-- CreateIndex
CREATE INDEX "task_company_id_material_id_idx" ON "task"("company_id", "material_id");

-- CreateIndex
CREATE INDEX "task_company_id_due_id_idx" ON "task"("company_id", "due_id");

-- CreateIndex
CREATE INDEX "task_company_id_waits_for_id_idx" ON "task"("company_id", "waits_for_id");

-- CreateIndex
CREATE INDEX "task_company_id_prototype_set_id_idx" ON "task"("company_id", "prototype_set_id");

-- CreateIndex
CREATE INDEX "task_company_id_shown_for_id_idx" ON "task"("company_id", "shown_for_id");

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_set_id_fkey" FOREIGN KEY ("company_id", "set_id") REFERENCES "garment_set"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_due_id_fkey" FOREIGN KEY ("company_id", "due_id") REFERENCES "milestone"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_waits_for_id_fkey" FOREIGN KEY ("company_id", "waits_for_id") REFERENCES "approval"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_prototype_set_id_fkey" FOREIGN KEY ("company_id", "prototype_set_id") REFERENCES "garment_set"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_shown_for_id_fkey" FOREIGN KEY ("company_id", "shown_for_id") REFERENCES "approval"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "approval" ADD CONSTRAINT "approval_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "approval" ADD CONSTRAINT "approval_company_id_set_id_fkey" FOREIGN KEY ("company_id", "set_id") REFERENCES "garment_set"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "approval" ADD CONSTRAINT "approval_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What the schema files cannot say.
ALTER TABLE "approval" ADD CONSTRAINT "approval_days_check" CHECK ("days" >= 0);
ALTER TABLE "task" ADD CONSTRAINT "task_priority_check" CHECK ("priority" BETWEEN 1 AND 3);
ALTER TABLE "task" ADD CONSTRAINT "task_about_check" CHECK (num_nonnulls("garment_number", "set_id", "material_id") <= 1);
ALTER TABLE "task" ADD CONSTRAINT "task_waits_for_check" CHECK (num_nonnulls("waits_for_id", "prototype_set_id") <= 1);
ALTER TABLE "task" ADD CONSTRAINT "task_shown_for_check" CHECK ("shown_for_id" IS NULL OR "origin" = 'sample');
