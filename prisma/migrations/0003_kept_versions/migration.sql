-- AlterTable
ALTER TABLE "piece" ADD COLUMN     "kept_version" INTEGER;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_construction_id_kept_version_fkey" FOREIGN KEY ("company_id", "construction_id", "kept_version") REFERENCES "construction_version"("company_id", "construction_id", "number") ON DELETE RESTRICT ON UPDATE CASCADE;

-- A version is of a construction: the key above lets a row without one pass.
ALTER TABLE "piece" ADD CONSTRAINT "piece_kept_version_check" CHECK ("kept_version" IS NULL OR "construction_id" IS NOT NULL);
