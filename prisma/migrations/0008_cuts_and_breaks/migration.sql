-- AlterTable
ALTER TABLE "material" ADD COLUMN     "grain" TEXT NOT NULL DEFAULT 'fixed',
ADD COLUMN     "keep" INTEGER,
ADD COLUMN     "kerf" INTEGER NOT NULL DEFAULT 0;

-- AlterTable
ALTER TABLE "offer" ADD COLUMN     "breaks" TEXT NOT NULL DEFAULT 'all',
ADD COLUMN     "order_cost" BIGINT NOT NULL DEFAULT 0;

-- What the schema files cannot say.
ALTER TABLE "material" ADD CONSTRAINT "material_cuts_check" CHECK ("kerf" >= 0 AND "keep" > 0 AND "grain" IN ('fixed', 'free'));
ALTER TABLE "offer" ADD CONSTRAINT "offer_breaks_check" CHECK ("breaks" IN ('all', 'incremental') AND "order_cost" >= 0);
