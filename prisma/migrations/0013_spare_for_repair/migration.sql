-- AlterTable
ALTER TABLE "garment_set" ADD COLUMN     "repair" INTEGER NOT NULL DEFAULT 0;

-- What the schema files cannot say.
ALTER TABLE "garment_set" ADD CONSTRAINT "garment_set_repair_check" CHECK ("repair" >= 0);
