-- CreateTable
CREATE TABLE "hand_pin" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "by_id" TEXT,
    "key" TEXT NOT NULL,
    "makers" TEXT[],
    "room" TEXT,
    "starts" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "hand_pin_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "hand_pin_company_id_by_id_idx" ON "hand_pin"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "hand_pin_company_id_id_key" ON "hand_pin"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "hand_pin_company_id_production_id_key_key" ON "hand_pin"("company_id", "production_id", "key");

-- AddForeignKey
ALTER TABLE "hand_pin" ADD CONSTRAINT "hand_pin_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hand_pin" ADD CONSTRAINT "hand_pin_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- Somebody works where something is fixed.
ALTER TABLE "hand_pin" ADD CONSTRAINT "hand_pin_makers_check" CHECK (cardinality("makers") > 0);
