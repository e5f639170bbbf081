-- AlterTable
ALTER TABLE "lot" ADD COLUMN     "breadth" INTEGER,
ADD COLUMN     "parent_id" UUID;

-- AlterTable
ALTER TABLE "movement" ADD COLUMN     "garments" TEXT[],
ADD COLUMN     "kind" TEXT NOT NULL DEFAULT 'adjusted',
ADD COLUMN     "left" BIGINT NOT NULL DEFAULT 0,
ADD COLUMN     "reservation_id" UUID;

-- CreateTable
CREATE TABLE "purchase_order" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "supplier" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "freight" BIGINT NOT NULL DEFAULT 0,
    "note" TEXT NOT NULL DEFAULT '',
    "drafted_on" DATE NOT NULL,
    "approved_on" DATE,
    "placed_on" DATE,
    "closed_on" DATE,
    "cancelled_on" DATE,
    "drafted_by_id" TEXT,
    "approved_by_id" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "purchase_order_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "order_line" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "order_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "lot_id" UUID,
    "line" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "colour" TEXT NOT NULL,
    "pack" BIGINT NOT NULL,
    "packs" INTEGER NOT NULL,
    "price_per_pack" BIGINT NOT NULL,
    "promised" DATE,
    "inspection_days" INTEGER NOT NULL,
    "one_lot_set" TEXT,
    "needed_by" DATE,
    "arithmetic" TEXT NOT NULL DEFAULT '',
    "garments" TEXT[],
    "received" BIGINT NOT NULL DEFAULT 0,
    "returned" BIGINT NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "order_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "receipt" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "line_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "by_id" TEXT,
    "day" DATE NOT NULL,
    "quantity" BIGINT NOT NULL,
    "charged" BIGINT,
    "note" TEXT NOT NULL DEFAULT '',
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "receipt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "supplier_return" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "line_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "by_id" TEXT,
    "day" DATE NOT NULL,
    "quantity" BIGINT NOT NULL,
    "credit" BIGINT NOT NULL,
    "why" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "supplier_return_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "order_correction" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "line_id" UUID NOT NULL,
    "by_id" TEXT,
    "day" DATE NOT NULL,
    "packs_before" INTEGER NOT NULL,
    "packs_after" INTEGER NOT NULL,
    "price_per_pack_before" BIGINT NOT NULL,
    "price_per_pack_after" BIGINT NOT NULL,
    "promised_before" DATE,
    "promised_after" DATE,
    "why" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "order_correction_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "budget_share" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "category" TEXT NOT NULL,
    "amount" BIGINT NOT NULL,

    CONSTRAINT "budget_share_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reservation" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "set_id" UUID,
    "by_id" TEXT,
    "quantity" BIGINT NOT NULL,
    "garments" TEXT[],
    "reason" TEXT NOT NULL DEFAULT '',
    "state" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "reservation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dye_entry" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID,
    "material_id" UUID NOT NULL,
    "lot_id" UUID,
    "by_id" TEXT,
    "colour" TEXT NOT NULL,
    "recipe" TEXT NOT NULL,
    "cautions" TEXT NOT NULL DEFAULT '',
    "dyed_on" DATE NOT NULL,
    "swatch" BYTEA,
    "swatch_type" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "dye_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cutting_proof" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "job" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "bound" INTEGER NOT NULL,
    "patterns" JSONB NOT NULL,
    "ended" BOOLEAN NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "cutting_proof_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "purchase_order_company_id_production_id_idx" ON "purchase_order"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "purchase_order_company_id_drafted_by_id_idx" ON "purchase_order"("company_id", "drafted_by_id");

-- CreateIndex
CREATE INDEX "purchase_order_company_id_approved_by_id_idx" ON "purchase_order"("company_id", "approved_by_id");

-- CreateIndex
CREATE UNIQUE INDEX "purchase_order_company_id_id_key" ON "purchase_order"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "purchase_order_company_id_number_key" ON "purchase_order"("company_id", "number");

-- CreateIndex
CREATE INDEX "order_line_company_id_material_id_idx" ON "order_line"("company_id", "material_id");

-- CreateIndex
CREATE INDEX "order_line_company_id_lot_id_idx" ON "order_line"("company_id", "lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "order_line_company_id_id_key" ON "order_line"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "order_line_company_id_order_id_line_key" ON "order_line"("company_id", "order_id", "line");

-- CreateIndex
CREATE INDEX "receipt_company_id_line_id_idx" ON "receipt"("company_id", "line_id");

-- CreateIndex
CREATE INDEX "receipt_company_id_lot_id_idx" ON "receipt"("company_id", "lot_id");

-- CreateIndex
CREATE INDEX "receipt_company_id_by_id_idx" ON "receipt"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "receipt_company_id_id_key" ON "receipt"("company_id", "id");

-- CreateIndex
CREATE INDEX "supplier_return_company_id_line_id_idx" ON "supplier_return"("company_id", "line_id");

-- CreateIndex
CREATE INDEX "supplier_return_company_id_lot_id_idx" ON "supplier_return"("company_id", "lot_id");

-- CreateIndex
CREATE INDEX "supplier_return_company_id_by_id_idx" ON "supplier_return"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "supplier_return_company_id_id_key" ON "supplier_return"("company_id", "id");

-- CreateIndex
CREATE INDEX "order_correction_company_id_line_id_idx" ON "order_correction"("company_id", "line_id");

-- CreateIndex
CREATE INDEX "order_correction_company_id_by_id_idx" ON "order_correction"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "order_correction_company_id_id_key" ON "order_correction"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "budget_share_company_id_id_key" ON "budget_share"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "budget_share_company_id_production_id_category_key" ON "budget_share"("company_id", "production_id", "category");

-- CreateIndex
CREATE INDEX "reservation_company_id_lot_id_idx" ON "reservation"("company_id", "lot_id");

-- CreateIndex
CREATE INDEX "reservation_company_id_production_id_idx" ON "reservation"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "reservation_company_id_set_id_idx" ON "reservation"("company_id", "set_id");

-- CreateIndex
CREATE INDEX "reservation_company_id_by_id_idx" ON "reservation"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "reservation_company_id_id_key" ON "reservation"("company_id", "id");

-- CreateIndex
CREATE INDEX "dye_entry_company_id_production_id_idx" ON "dye_entry"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "dye_entry_company_id_material_id_idx" ON "dye_entry"("company_id", "material_id");

-- CreateIndex
CREATE INDEX "dye_entry_company_id_lot_id_idx" ON "dye_entry"("company_id", "lot_id");

-- CreateIndex
CREATE INDEX "dye_entry_company_id_by_id_idx" ON "dye_entry"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "dye_entry_company_id_id_key" ON "dye_entry"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "cutting_proof_company_id_id_key" ON "cutting_proof"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "cutting_proof_company_id_job_key" ON "cutting_proof"("company_id", "job");

-- CreateIndex
CREATE INDEX "lot_company_id_parent_id_idx" ON "lot"("company_id", "parent_id");

-- CreateIndex
CREATE INDEX "movement_company_id_reservation_id_idx" ON "movement"("company_id", "reservation_id");

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_company_id_parent_id_fkey" FOREIGN KEY ("company_id", "parent_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_company_id_drafted_by_id_fkey" FOREIGN KEY ("company_id", "drafted_by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_company_id_approved_by_id_fkey" FOREIGN KEY ("company_id", "approved_by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_company_id_order_id_fkey" FOREIGN KEY ("company_id", "order_id") REFERENCES "purchase_order"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_company_id_line_id_fkey" FOREIGN KEY ("company_id", "line_id") REFERENCES "order_line"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_company_id_line_id_fkey" FOREIGN KEY ("company_id", "line_id") REFERENCES "order_line"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_correction" ADD CONSTRAINT "order_correction_company_id_line_id_fkey" FOREIGN KEY ("company_id", "line_id") REFERENCES "order_line"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "order_correction" ADD CONSTRAINT "order_correction_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "budget_share" ADD CONSTRAINT "budget_share_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_company_id_reservation_id_fkey" FOREIGN KEY ("company_id", "reservation_id") REFERENCES "reservation"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reservation" ADD CONSTRAINT "reservation_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reservation" ADD CONSTRAINT "reservation_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reservation" ADD CONSTRAINT "reservation_company_id_set_id_fkey" FOREIGN KEY ("company_id", "set_id") REFERENCES "garment_set"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reservation" ADD CONSTRAINT "reservation_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cutting_proof" ADD CONSTRAINT "cutting_proof_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What the schema files cannot say. Movements there are tell no kind and no rest.
ALTER TABLE "movement" ALTER COLUMN "kind" DROP DEFAULT, ALTER COLUMN "left" DROP DEFAULT;
ALTER TABLE "movement" DROP CONSTRAINT "movement_quantity_check";
ALTER TABLE "movement" ADD CONSTRAINT "movement_quantity_check" CHECK ("quantity" <> 0 OR "kind" IN ('counted', 'moved'));
ALTER TABLE "movement" ADD CONSTRAINT "movement_kind_check"
  CHECK ("kind" IN ('received', 'cut', 'put back', 'returned', 'counted', 'adjusted', 'parted', 'moved', 'register'));
ALTER TABLE "movement" ADD CONSTRAINT "movement_left_check" CHECK ("left" >= 0);
ALTER TABLE "movement" ADD CONSTRAINT "movement_reason_check" CHECK ("reason" <> '' OR "kind" <> 'adjusted');

ALTER TABLE "lot" ADD CONSTRAINT "lot_breadth_check" CHECK ("breadth" > 0);
ALTER TABLE "lot" ADD CONSTRAINT "lot_parent_check" CHECK ("parent_id" <> "id");

ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_number_check" CHECK ("number" >= 1);
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_supplier_check" CHECK ("supplier" <> '');
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_currency_check" CHECK ("currency" ~ '^[A-Z]{3}$');
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_freight_check" CHECK ("freight" >= 0);
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_approved_check" CHECK ("placed_on" IS NULL OR "approved_on" IS NOT NULL);
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_closed_check" CHECK ("closed_on" IS NULL OR "placed_on" IS NOT NULL);
ALTER TABLE "purchase_order" ADD CONSTRAINT "purchase_order_ended_check" CHECK (num_nonnulls("closed_on", "cancelled_on") <= 1);

ALTER TABLE "order_line" ADD CONSTRAINT "order_line_line_check" CHECK ("line" >= 1);
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_packs_check" CHECK ("pack" > 0 AND "packs" >= 0);
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_price_check" CHECK ("price_per_pack" >= 0);
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_inspection_check" CHECK ("inspection_days" >= 0);
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_received_check" CHECK ("received" >= 0);
ALTER TABLE "order_line" ADD CONSTRAINT "order_line_returned_check" CHECK ("returned" BETWEEN 0 AND "received");
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_quantity_check" CHECK ("quantity" > 0);
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_charged_check" CHECK ("charged" >= 0);
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_quantity_check" CHECK ("quantity" > 0);
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_credit_check" CHECK ("credit" >= 0);
ALTER TABLE "supplier_return" ADD CONSTRAINT "supplier_return_why_check" CHECK ("why" <> '');
ALTER TABLE "order_correction" ADD CONSTRAINT "order_correction_after_check" CHECK ("packs_after" >= 0 AND "price_per_pack_after" >= 0);
ALTER TABLE "order_correction" ADD CONSTRAINT "order_correction_why_check" CHECK ("why" <> '');

ALTER TABLE "budget_share" ADD CONSTRAINT "budget_share_amount_check" CHECK ("amount" >= 0);
ALTER TABLE "budget_share" ADD CONSTRAINT "budget_share_category_check"
  CHECK ("category" IN ('net', 'foundation', 'cloth', 'lining', 'stretch', 'bone', 'hoop', 'hook', 'bar', 'elastic', 'ribbon', 'thread', 'trim',
    'wire', 'fixing', 'bought', 'dye'));

ALTER TABLE "reservation" ADD CONSTRAINT "reservation_quantity_check" CHECK ("quantity" > 0);
ALTER TABLE "reservation" ADD CONSTRAINT "reservation_state_check" CHECK ("state" IN ('held', 'released', 'used'));

ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_colour_check" CHECK ("colour" <> '');
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_recipe_check" CHECK ("recipe" <> '');
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_swatch_check" CHECK (num_nonnulls("swatch", "swatch_type") IN (0, 2));
ALTER TABLE "dye_entry" ADD CONSTRAINT "dye_entry_swatch_type_check" CHECK ("swatch_type" IN ('image/png', 'image/jpeg', 'image/webp'));

ALTER TABLE "cutting_proof" ADD CONSTRAINT "cutting_proof_count_check" CHECK ("count" >= 1 AND "bound" >= 1 AND "bound" <= "count");
