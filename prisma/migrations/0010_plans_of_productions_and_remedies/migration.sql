-- AlterTable
ALTER TABLE "plan_row" ADD COLUMN     "machine" TEXT;

-- AlterTable
ALTER TABLE "production" ADD COLUMN     "visits_per_week" INTEGER;

-- CreateTable
CREATE TABLE "remedy_run" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "started_by_id" TEXT,
    "asked" JSONB NOT NULL,
    "state" TEXT NOT NULL,
    "made" INTEGER NOT NULL DEFAULT 0,
    "plans" INTEGER NOT NULL DEFAULT 0,
    "found" JSONB,
    "error" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "reported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "remedy_run_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "remedy_run_company_id_production_id_created_at_idx" ON "remedy_run"("company_id", "production_id", "created_at");

-- CreateIndex
CREATE INDEX "remedy_run_company_id_plan_id_idx" ON "remedy_run"("company_id", "plan_id");

-- CreateIndex
CREATE INDEX "remedy_run_company_id_started_by_id_idx" ON "remedy_run"("company_id", "started_by_id");

-- CreateIndex
CREATE UNIQUE INDEX "remedy_run_company_id_id_key" ON "remedy_run"("company_id", "id");

-- AddForeignKey
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_company_id_plan_id_fkey" FOREIGN KEY ("company_id", "plan_id") REFERENCES "plan"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_company_id_started_by_id_fkey" FOREIGN KEY ("company_id", "started_by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- A production works by one plan; several share a workroom, each by its own.
DROP INDEX "plan_one_current";
CREATE UNIQUE INDEX "plan_one_current" ON "plan" ("company_id", "production_id") WHERE "current";

ALTER TABLE "production" ADD CONSTRAINT "production_visits_per_week_check" CHECK ("visits_per_week" > 0);

ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_state_check" CHECK ("state" IN ('queued', 'running', 'finished', 'failed'));
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_plans_check" CHECK ("made" >= 0 AND "plans" >= "made");
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_ended_check" CHECK (("state" IN ('queued', 'running')) = ("ended_at" IS NULL));
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_error_check" CHECK (("state" = 'failed') = ("error" IS NOT NULL));
ALTER TABLE "remedy_run" ADD CONSTRAINT "remedy_run_found_check" CHECK (("state" = 'finished') = ("found" IS NOT NULL));
CREATE UNIQUE INDEX "remedy_run_one_active" ON "remedy_run" ("company_id", "production_id") WHERE "state" IN ('queued', 'running');
