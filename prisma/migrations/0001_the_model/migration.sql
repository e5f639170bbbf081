-- CreateTable
CREATE TABLE "auth_user" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "email_verified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_user_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_session" (
    "id" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "user_id" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "ip_address" TEXT,
    "user_agent" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_account" (
    "id" TEXT NOT NULL,
    "account_id" TEXT NOT NULL,
    "provider_id" TEXT NOT NULL,
    "user_id" TEXT NOT NULL,
    "access_token" TEXT,
    "refresh_token" TEXT,
    "id_token" TEXT,
    "access_token_expires_at" TIMESTAMPTZ(3),
    "refresh_token_expires_at" TIMESTAMPTZ(3),
    "scope" TEXT,
    "password" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "auth_verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "auth_verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "role" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "role_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "place" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "role_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,

    CONSTRAINT "place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cast" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "cast_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "cast_place" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "cast_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "performer_id" UUID,
    "size_group_id" UUID NOT NULL,
    "standing" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "cast_place_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "scene" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "act" INTEGER NOT NULL,
    "starts" INTEGER NOT NULL,
    "minutes" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "scene_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "appearance" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "role_id" UUID NOT NULL,
    "scene_id" UUID NOT NULL,
    "costume_id" UUID NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "appearance_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "company" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "company_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "membership" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "user_id" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "membership_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "workroom" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "zone" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "workroom_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "garment" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "construction_id" UUID,
    "number" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "location" TEXT NOT NULL,
    "condition" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "garment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "garment_use" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "garment_id" UUID NOT NULL,
    "piece_id" UUID NOT NULL,
    "ordinal" INTEGER NOT NULL,
    "prototype" BOOLEAN NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "garment_use_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "garment_wearer" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "use_id" UUID NOT NULL,
    "cast_id" UUID NOT NULL,
    "place_id" UUID NOT NULL,
    "performer_id" UUID,
    "size_group_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "standing" TEXT NOT NULL,

    CONSTRAINT "garment_wearer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "construction" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "code" TEXT NOT NULL,

    CONSTRAINT "construction_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "construction_version" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "construction_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "data" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "construction_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "material" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "measure" TEXT NOT NULL,
    "colour" TEXT NOT NULL,
    "width" INTEGER,
    "cuttable" INTEGER,
    "shrinkage" INTEGER NOT NULL,
    "spare" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "material_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "offer" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "supplier" TEXT NOT NULL,
    "pack" BIGINT NOT NULL,
    "minimum_packs" INTEGER NOT NULL,
    "lead_days" INTEGER NOT NULL,
    "inspection_days" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "offer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "offer_price" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "offer_id" UUID NOT NULL,
    "from_packs" INTEGER NOT NULL,
    "price" BIGINT NOT NULL,

    CONSTRAINT "offer_price_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "lot" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "dye_lot" TEXT NOT NULL,
    "quantity" BIGINT NOT NULL,
    "location" TEXT NOT NULL,
    "arrives" DATE,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "lot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "movement" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "production_id" UUID,
    "by_id" TEXT,
    "quantity" BIGINT NOT NULL,
    "reason" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "movement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "size_group" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "size_group_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "performer" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "size_group_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "minor" BOOLEAN NOT NULL DEFAULT false,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "performer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "measurement_sheet" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "performer_id" UUID,
    "size_group_id" UUID,
    "taken" DATE NOT NULL,
    "body" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "measurement_sheet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "measurement_value" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "sheet_id" UUID NOT NULL,
    "measurement" TEXT NOT NULL,
    "length" INTEGER NOT NULL,

    CONSTRAINT "measurement_value_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "call" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "performer_id" UUID,
    "date" DATE NOT NULL,
    "from_minute" INTEGER NOT NULL,
    "to_minute" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "call_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "made_by_id" TEXT,
    "current" BOOLEAN NOT NULL DEFAULT false,
    "published_at" TIMESTAMPTZ(3),
    "name" TEXT NOT NULL,
    "seed" INTEGER NOT NULL,
    "rounds" INTEGER NOT NULL,
    "schedules" BIGINT NOT NULL,
    "rule" TEXT NOT NULL,
    "measures" JSONB NOT NULL,
    "bounds" JSONB NOT NULL,
    "input_revision" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "plan_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan_row" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "starts" INTEGER,
    "ends" INTEGER,
    "overtime" BOOLEAN NOT NULL,
    "reason" TEXT,
    "detail" TEXT,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "plan_row_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan_row_maker" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "row_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "skill" TEXT NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "plan_row_maker_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan_visit" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "fitter_id" UUID NOT NULL,
    "performer" TEXT NOT NULL,
    "room" TEXT NOT NULL,
    "starts" INTEGER NOT NULL,
    "ends" INTEGER NOT NULL,
    "fittings" TEXT[],
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "plan_visit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "plan_run" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "plan_id" UUID,
    "started_by_id" TEXT,
    "state" TEXT NOT NULL,
    "stop_requested" BOOLEAN NOT NULL DEFAULT false,
    "seed" INTEGER NOT NULL,
    "rounds" INTEGER NOT NULL,
    "round" INTEGER NOT NULL DEFAULT 0,
    "progress" JSONB,
    "error" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "reported_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "plan_run_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "production" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "subtitle" TEXT NOT NULL,
    "starts" DATE NOT NULL,
    "budget" BIGINT,
    "currency" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "lengths" TEXT NOT NULL,
    "prefix" TEXT NOT NULL,
    "input_revision" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "production_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "milestone" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "date" DATE NOT NULL,
    "at" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "milestone_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "production_construction" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "production_construction_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "note" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID,
    "garment_id" UUID,
    "performer_id" UUID,
    "by_id" TEXT,
    "text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "note_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "file" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID,
    "garment_id" UUID,
    "by_id" TEXT,
    "name" TEXT NOT NULL,
    "media_type" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "path" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "file_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_entry" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID,
    "by_id" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "action" TEXT NOT NULL,
    "subject" TEXT NOT NULL,
    "subject_id" UUID,
    "summary" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "costume" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "role_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "costume_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "garment_set" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "one_dye_lot" BOOLEAN NOT NULL,
    "prototype" BOOLEAN NOT NULL,
    "free_until" TEXT,
    "approval_days" INTEGER NOT NULL,
    "approved_on" DATE,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "garment_set_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "piece" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "costume_id" UUID NOT NULL,
    "construction_id" UUID,
    "set_id" UUID,
    "due_id" UUID NOT NULL,
    "stock_id" UUID,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "each" TEXT NOT NULL,
    "parameters" JSONB NOT NULL,
    "weight" DOUBLE PRECISION NOT NULL,
    "price" BIGINT,
    "position" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "piece_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "piece_material" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "piece_id" UUID NOT NULL,
    "material_id" UUID NOT NULL,
    "role" TEXT NOT NULL,

    CONSTRAINT "piece_material_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "task" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "skill" TEXT NOT NULL,
    "machine" TEXT,
    "low_minutes" INTEGER NOT NULL,
    "likely_minutes" INTEGER NOT NULL,
    "high_minutes" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "task_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "task_garment" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "task_id" UUID NOT NULL,
    "use_id" UUID NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "task_garment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "worked_minutes" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "task_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "minutes" INTEGER NOT NULL,
    "note" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "worked_minutes_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "visit" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "production_id" UUID NOT NULL,
    "performer_id" UUID NOT NULL,
    "fitter_id" UUID NOT NULL,
    "room_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "from_minute" INTEGER NOT NULL,
    "to_minute" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "visit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fitting" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "use_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "fitting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "maker" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "trade" TEXT NOT NULL,
    "employment" TEXT NOT NULL,
    "productive" INTEGER NOT NULL,
    "reserved_minutes_per_week" INTEGER NOT NULL,
    "cost_per_hour" BIGINT NOT NULL,
    "overtime_cost_per_hour" BIGINT NOT NULL,
    "starts" DATE,
    "ends" DATE,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "maker_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "maker_skill" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "skill" TEXT NOT NULL,
    "pace" INTEGER NOT NULL,

    CONSTRAINT "maker_skill_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "maker_hours" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "weekday" INTEGER NOT NULL,
    "from_minute" INTEGER NOT NULL,
    "to_minute" INTEGER NOT NULL,
    "overtime" BOOLEAN NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "maker_hours_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "maker_pace" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "maker_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "pace" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "maker_pace_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "absence" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "maker_id" UUID,
    "from_date" DATE NOT NULL,
    "to_date" DATE NOT NULL,
    "from_minute" INTEGER,
    "to_minute" INTEGER,
    "reason" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "absence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "machine" (
    "id" UUID NOT NULL,
    "company_id" UUID NOT NULL,
    "workroom_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "machine_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "auth_user_email_key" ON "auth_user"("email");

-- CreateIndex
CREATE UNIQUE INDEX "auth_session_token_key" ON "auth_session"("token");

-- CreateIndex
CREATE INDEX "auth_session_user_id_idx" ON "auth_session"("user_id");

-- CreateIndex
CREATE INDEX "auth_account_user_id_idx" ON "auth_account"("user_id");

-- CreateIndex
CREATE UNIQUE INDEX "auth_account_provider_id_account_id_key" ON "auth_account"("provider_id", "account_id");

-- CreateIndex
CREATE INDEX "auth_verification_identifier_idx" ON "auth_verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "role_company_id_id_key" ON "role"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "role_company_id_production_id_code_key" ON "role"("company_id", "production_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "place_company_id_id_key" ON "place"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "place_company_id_role_id_number_key" ON "place"("company_id", "role_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "cast_company_id_id_key" ON "cast"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "cast_company_id_production_id_code_key" ON "cast"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "cast_place_company_id_cast_id_idx" ON "cast_place"("company_id", "cast_id");

-- CreateIndex
CREATE INDEX "cast_place_company_id_place_id_idx" ON "cast_place"("company_id", "place_id");

-- CreateIndex
CREATE INDEX "cast_place_company_id_performer_id_idx" ON "cast_place"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "cast_place_company_id_size_group_id_idx" ON "cast_place"("company_id", "size_group_id");

-- CreateIndex
CREATE UNIQUE INDEX "cast_place_company_id_id_key" ON "cast_place"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "scene_company_id_id_key" ON "scene"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "scene_company_id_production_id_code_key" ON "scene"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "appearance_company_id_role_id_idx" ON "appearance"("company_id", "role_id");

-- CreateIndex
CREATE INDEX "appearance_company_id_scene_id_idx" ON "appearance"("company_id", "scene_id");

-- CreateIndex
CREATE INDEX "appearance_company_id_costume_id_idx" ON "appearance"("company_id", "costume_id");

-- CreateIndex
CREATE UNIQUE INDEX "appearance_company_id_id_key" ON "appearance"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "company_code_key" ON "company"("code");

-- CreateIndex
CREATE UNIQUE INDEX "membership_company_id_id_key" ON "membership"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "membership_company_id_user_id_key" ON "membership"("company_id", "user_id");

-- CreateIndex
CREATE UNIQUE INDEX "workroom_company_id_id_key" ON "workroom"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "workroom_company_id_code_key" ON "workroom"("company_id", "code");

-- CreateIndex
CREATE INDEX "garment_company_id_construction_id_idx" ON "garment"("company_id", "construction_id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_company_id_id_key" ON "garment"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_company_id_number_key" ON "garment"("company_id", "number");

-- CreateIndex
CREATE INDEX "garment_use_company_id_garment_id_idx" ON "garment_use"("company_id", "garment_id");

-- CreateIndex
CREATE INDEX "garment_use_company_id_piece_id_idx" ON "garment_use"("company_id", "piece_id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_use_company_id_id_key" ON "garment_use"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_use_company_id_production_id_garment_id_key" ON "garment_use"("company_id", "production_id", "garment_id");

-- CreateIndex
CREATE INDEX "garment_wearer_company_id_cast_id_idx" ON "garment_wearer"("company_id", "cast_id");

-- CreateIndex
CREATE INDEX "garment_wearer_company_id_place_id_idx" ON "garment_wearer"("company_id", "place_id");

-- CreateIndex
CREATE INDEX "garment_wearer_company_id_performer_id_idx" ON "garment_wearer"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "garment_wearer_company_id_size_group_id_idx" ON "garment_wearer"("company_id", "size_group_id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_wearer_company_id_id_key" ON "garment_wearer"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_wearer_company_id_use_id_position_key" ON "garment_wearer"("company_id", "use_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "construction_company_id_id_key" ON "construction"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "construction_company_id_code_key" ON "construction"("company_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "construction_version_company_id_id_key" ON "construction_version"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "construction_version_company_id_construction_id_number_key" ON "construction_version"("company_id", "construction_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "material_company_id_id_key" ON "material"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "material_company_id_code_key" ON "material"("company_id", "code");

-- CreateIndex
CREATE INDEX "offer_company_id_material_id_idx" ON "offer"("company_id", "material_id");

-- CreateIndex
CREATE UNIQUE INDEX "offer_company_id_id_key" ON "offer"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "offer_price_company_id_id_key" ON "offer_price"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "offer_price_company_id_offer_id_from_packs_key" ON "offer_price"("company_id", "offer_id", "from_packs");

-- CreateIndex
CREATE INDEX "lot_company_id_material_id_idx" ON "lot"("company_id", "material_id");

-- CreateIndex
CREATE UNIQUE INDEX "lot_company_id_id_key" ON "lot"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "lot_company_id_code_key" ON "lot"("company_id", "code");

-- CreateIndex
CREATE INDEX "movement_company_id_lot_id_idx" ON "movement"("company_id", "lot_id");

-- CreateIndex
CREATE INDEX "movement_company_id_production_id_idx" ON "movement"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "movement_company_id_by_id_idx" ON "movement"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "movement_company_id_id_key" ON "movement"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "size_group_company_id_id_key" ON "size_group"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "size_group_company_id_code_key" ON "size_group"("company_id", "code");

-- CreateIndex
CREATE INDEX "performer_company_id_size_group_id_idx" ON "performer"("company_id", "size_group_id");

-- CreateIndex
CREATE UNIQUE INDEX "performer_company_id_id_key" ON "performer"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "performer_company_id_code_key" ON "performer"("company_id", "code");

-- CreateIndex
CREATE INDEX "measurement_sheet_company_id_performer_id_idx" ON "measurement_sheet"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "measurement_sheet_company_id_size_group_id_idx" ON "measurement_sheet"("company_id", "size_group_id");

-- CreateIndex
CREATE UNIQUE INDEX "measurement_sheet_company_id_id_key" ON "measurement_sheet"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "measurement_value_company_id_id_key" ON "measurement_value"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "measurement_value_company_id_sheet_id_measurement_key" ON "measurement_value"("company_id", "sheet_id", "measurement");

-- CreateIndex
CREATE INDEX "call_company_id_date_idx" ON "call"("company_id", "date");

-- CreateIndex
CREATE INDEX "call_company_id_performer_id_idx" ON "call"("company_id", "performer_id");

-- CreateIndex
CREATE UNIQUE INDEX "call_company_id_id_key" ON "call"("company_id", "id");

-- CreateIndex
CREATE INDEX "plan_company_id_production_id_created_at_idx" ON "plan"("company_id", "production_id", "created_at");

-- CreateIndex
CREATE INDEX "plan_company_id_workroom_id_idx" ON "plan"("company_id", "workroom_id");

-- CreateIndex
CREATE INDEX "plan_company_id_made_by_id_idx" ON "plan"("company_id", "made_by_id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_company_id_id_key" ON "plan"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_row_company_id_id_key" ON "plan_row"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_row_company_id_plan_id_key_key" ON "plan_row"("company_id", "plan_id", "key");

-- CreateIndex
CREATE INDEX "plan_row_maker_company_id_maker_id_idx" ON "plan_row_maker"("company_id", "maker_id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_row_maker_company_id_id_key" ON "plan_row_maker"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_row_maker_company_id_row_id_position_key" ON "plan_row_maker"("company_id", "row_id", "position");

-- CreateIndex
CREATE INDEX "plan_visit_company_id_plan_id_idx" ON "plan_visit"("company_id", "plan_id");

-- CreateIndex
CREATE INDEX "plan_visit_company_id_fitter_id_idx" ON "plan_visit"("company_id", "fitter_id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_visit_company_id_id_key" ON "plan_visit"("company_id", "id");

-- CreateIndex
CREATE INDEX "plan_run_company_id_production_id_created_at_idx" ON "plan_run"("company_id", "production_id", "created_at");

-- CreateIndex
CREATE INDEX "plan_run_company_id_workroom_id_idx" ON "plan_run"("company_id", "workroom_id");

-- CreateIndex
CREATE INDEX "plan_run_company_id_plan_id_idx" ON "plan_run"("company_id", "plan_id");

-- CreateIndex
CREATE INDEX "plan_run_company_id_started_by_id_idx" ON "plan_run"("company_id", "started_by_id");

-- CreateIndex
CREATE UNIQUE INDEX "plan_run_company_id_id_key" ON "plan_run"("company_id", "id");

-- CreateIndex
CREATE INDEX "production_company_id_workroom_id_idx" ON "production"("company_id", "workroom_id");

-- CreateIndex
CREATE UNIQUE INDEX "production_company_id_id_key" ON "production"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "production_company_id_code_key" ON "production"("company_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "milestone_company_id_id_key" ON "milestone"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "milestone_company_id_production_id_code_key" ON "milestone"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "production_construction_company_id_version_id_idx" ON "production_construction"("company_id", "version_id");

-- CreateIndex
CREATE UNIQUE INDEX "production_construction_company_id_id_key" ON "production_construction"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "production_construction_company_id_production_id_version_id_key" ON "production_construction"("company_id", "production_id", "version_id");

-- CreateIndex
CREATE INDEX "note_company_id_production_id_idx" ON "note"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "note_company_id_garment_id_idx" ON "note"("company_id", "garment_id");

-- CreateIndex
CREATE INDEX "note_company_id_performer_id_idx" ON "note"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "note_company_id_by_id_idx" ON "note"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "note_company_id_id_key" ON "note"("company_id", "id");

-- CreateIndex
CREATE INDEX "file_company_id_production_id_idx" ON "file"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "file_company_id_garment_id_idx" ON "file"("company_id", "garment_id");

-- CreateIndex
CREATE INDEX "file_company_id_by_id_idx" ON "file"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "file_company_id_id_key" ON "file"("company_id", "id");

-- CreateIndex
CREATE INDEX "audit_entry_company_id_production_id_at_idx" ON "audit_entry"("company_id", "production_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_company_id_subject_subject_id_at_idx" ON "audit_entry"("company_id", "subject", "subject_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_company_id_by_id_idx" ON "audit_entry"("company_id", "by_id");

-- CreateIndex
CREATE UNIQUE INDEX "audit_entry_company_id_id_key" ON "audit_entry"("company_id", "id");

-- CreateIndex
CREATE INDEX "costume_company_id_role_id_idx" ON "costume"("company_id", "role_id");

-- CreateIndex
CREATE UNIQUE INDEX "costume_company_id_id_key" ON "costume"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "costume_company_id_production_id_code_key" ON "costume"("company_id", "production_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "garment_set_company_id_id_key" ON "garment_set"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "garment_set_company_id_production_id_code_key" ON "garment_set"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "piece_company_id_costume_id_idx" ON "piece"("company_id", "costume_id");

-- CreateIndex
CREATE INDEX "piece_company_id_construction_id_idx" ON "piece"("company_id", "construction_id");

-- CreateIndex
CREATE INDEX "piece_company_id_set_id_idx" ON "piece"("company_id", "set_id");

-- CreateIndex
CREATE INDEX "piece_company_id_due_id_idx" ON "piece"("company_id", "due_id");

-- CreateIndex
CREATE INDEX "piece_company_id_stock_id_idx" ON "piece"("company_id", "stock_id");

-- CreateIndex
CREATE UNIQUE INDEX "piece_company_id_id_key" ON "piece"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "piece_company_id_production_id_code_key" ON "piece"("company_id", "production_id", "code");

-- CreateIndex
CREATE INDEX "piece_material_company_id_material_id_idx" ON "piece_material"("company_id", "material_id");

-- CreateIndex
CREATE UNIQUE INDEX "piece_material_company_id_id_key" ON "piece_material"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "piece_material_company_id_piece_id_role_key" ON "piece_material"("company_id", "piece_id", "role");

-- CreateIndex
CREATE UNIQUE INDEX "task_company_id_id_key" ON "task"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "task_company_id_production_id_key_key" ON "task"("company_id", "production_id", "key");

-- CreateIndex
CREATE INDEX "task_garment_company_id_use_id_idx" ON "task_garment"("company_id", "use_id");

-- CreateIndex
CREATE UNIQUE INDEX "task_garment_company_id_id_key" ON "task_garment"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "task_garment_company_id_task_id_use_id_key" ON "task_garment"("company_id", "task_id", "use_id");

-- CreateIndex
CREATE INDEX "worked_minutes_company_id_task_id_idx" ON "worked_minutes"("company_id", "task_id");

-- CreateIndex
CREATE INDEX "worked_minutes_company_id_maker_id_idx" ON "worked_minutes"("company_id", "maker_id");

-- CreateIndex
CREATE UNIQUE INDEX "worked_minutes_company_id_id_key" ON "worked_minutes"("company_id", "id");

-- CreateIndex
CREATE INDEX "visit_company_id_production_id_idx" ON "visit"("company_id", "production_id");

-- CreateIndex
CREATE INDEX "visit_company_id_performer_id_idx" ON "visit"("company_id", "performer_id");

-- CreateIndex
CREATE INDEX "visit_company_id_fitter_id_idx" ON "visit"("company_id", "fitter_id");

-- CreateIndex
CREATE INDEX "visit_company_id_room_id_idx" ON "visit"("company_id", "room_id");

-- CreateIndex
CREATE UNIQUE INDEX "visit_company_id_id_key" ON "visit"("company_id", "id");

-- CreateIndex
CREATE INDEX "fitting_company_id_use_id_idx" ON "fitting"("company_id", "use_id");

-- CreateIndex
CREATE UNIQUE INDEX "fitting_company_id_id_key" ON "fitting"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "fitting_company_id_visit_id_use_id_kind_key" ON "fitting"("company_id", "visit_id", "use_id", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "maker_company_id_id_key" ON "maker"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_company_id_workroom_id_code_key" ON "maker"("company_id", "workroom_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "maker_skill_company_id_id_key" ON "maker_skill"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_skill_company_id_maker_id_skill_key" ON "maker_skill"("company_id", "maker_id", "skill");

-- CreateIndex
CREATE INDEX "maker_hours_company_id_maker_id_idx" ON "maker_hours"("company_id", "maker_id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_hours_company_id_id_key" ON "maker_hours"("company_id", "id");

-- CreateIndex
CREATE INDEX "maker_pace_company_id_maker_id_idx" ON "maker_pace"("company_id", "maker_id");

-- CreateIndex
CREATE UNIQUE INDEX "maker_pace_company_id_id_key" ON "maker_pace"("company_id", "id");

-- CreateIndex
CREATE INDEX "absence_company_id_workroom_id_idx" ON "absence"("company_id", "workroom_id");

-- CreateIndex
CREATE INDEX "absence_company_id_maker_id_idx" ON "absence"("company_id", "maker_id");

-- CreateIndex
CREATE UNIQUE INDEX "absence_company_id_id_key" ON "absence"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "machine_company_id_id_key" ON "machine"("company_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "machine_company_id_workroom_id_code_key" ON "machine"("company_id", "workroom_id", "code");

-- AddForeignKey
ALTER TABLE "auth_session" ADD CONSTRAINT "auth_session_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "auth_user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "auth_account" ADD CONSTRAINT "auth_account_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "auth_user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "role" ADD CONSTRAINT "role_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "place" ADD CONSTRAINT "place_company_id_role_id_fkey" FOREIGN KEY ("company_id", "role_id") REFERENCES "role"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cast" ADD CONSTRAINT "cast_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cast_place" ADD CONSTRAINT "cast_place_company_id_cast_id_fkey" FOREIGN KEY ("company_id", "cast_id") REFERENCES "cast"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cast_place" ADD CONSTRAINT "cast_place_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "place"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cast_place" ADD CONSTRAINT "cast_place_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "cast_place" ADD CONSTRAINT "cast_place_company_id_size_group_id_fkey" FOREIGN KEY ("company_id", "size_group_id") REFERENCES "size_group"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "scene" ADD CONSTRAINT "scene_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appearance" ADD CONSTRAINT "appearance_company_id_role_id_fkey" FOREIGN KEY ("company_id", "role_id") REFERENCES "role"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appearance" ADD CONSTRAINT "appearance_company_id_scene_id_fkey" FOREIGN KEY ("company_id", "scene_id") REFERENCES "scene"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "appearance" ADD CONSTRAINT "appearance_company_id_costume_id_fkey" FOREIGN KEY ("company_id", "costume_id") REFERENCES "costume"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "membership" ADD CONSTRAINT "membership_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "auth_user"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "workroom" ADD CONSTRAINT "workroom_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment" ADD CONSTRAINT "garment_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment" ADD CONSTRAINT "garment_company_id_construction_id_fkey" FOREIGN KEY ("company_id", "construction_id") REFERENCES "construction"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_use" ADD CONSTRAINT "garment_use_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_use" ADD CONSTRAINT "garment_use_company_id_garment_id_fkey" FOREIGN KEY ("company_id", "garment_id") REFERENCES "garment"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_use" ADD CONSTRAINT "garment_use_company_id_piece_id_fkey" FOREIGN KEY ("company_id", "piece_id") REFERENCES "piece"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_company_id_use_id_fkey" FOREIGN KEY ("company_id", "use_id") REFERENCES "garment_use"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_company_id_cast_id_fkey" FOREIGN KEY ("company_id", "cast_id") REFERENCES "cast"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_company_id_place_id_fkey" FOREIGN KEY ("company_id", "place_id") REFERENCES "place"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_company_id_size_group_id_fkey" FOREIGN KEY ("company_id", "size_group_id") REFERENCES "size_group"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "construction" ADD CONSTRAINT "construction_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "construction_version" ADD CONSTRAINT "construction_version_company_id_construction_id_fkey" FOREIGN KEY ("company_id", "construction_id") REFERENCES "construction"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "material" ADD CONSTRAINT "material_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "offer" ADD CONSTRAINT "offer_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "offer_price" ADD CONSTRAINT "offer_price_company_id_offer_id_fkey" FOREIGN KEY ("company_id", "offer_id") REFERENCES "offer"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "movement" ADD CONSTRAINT "movement_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "size_group" ADD CONSTRAINT "size_group_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "performer" ADD CONSTRAINT "performer_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "performer" ADD CONSTRAINT "performer_company_id_size_group_id_fkey" FOREIGN KEY ("company_id", "size_group_id") REFERENCES "size_group"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "measurement_sheet" ADD CONSTRAINT "measurement_sheet_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "measurement_sheet" ADD CONSTRAINT "measurement_sheet_company_id_size_group_id_fkey" FOREIGN KEY ("company_id", "size_group_id") REFERENCES "size_group"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "measurement_value" ADD CONSTRAINT "measurement_value_company_id_sheet_id_fkey" FOREIGN KEY ("company_id", "sheet_id") REFERENCES "measurement_sheet"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "call" ADD CONSTRAINT "call_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "call" ADD CONSTRAINT "call_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_company_id_made_by_id_fkey" FOREIGN KEY ("company_id", "made_by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_row" ADD CONSTRAINT "plan_row_company_id_plan_id_fkey" FOREIGN KEY ("company_id", "plan_id") REFERENCES "plan"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_row_maker" ADD CONSTRAINT "plan_row_maker_company_id_row_id_fkey" FOREIGN KEY ("company_id", "row_id") REFERENCES "plan_row"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_row_maker" ADD CONSTRAINT "plan_row_maker_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_visit" ADD CONSTRAINT "plan_visit_company_id_plan_id_fkey" FOREIGN KEY ("company_id", "plan_id") REFERENCES "plan"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_visit" ADD CONSTRAINT "plan_visit_company_id_fitter_id_fkey" FOREIGN KEY ("company_id", "fitter_id") REFERENCES "maker"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_company_id_plan_id_fkey" FOREIGN KEY ("company_id", "plan_id") REFERENCES "plan"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_company_id_started_by_id_fkey" FOREIGN KEY ("company_id", "started_by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "production" ADD CONSTRAINT "production_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "production" ADD CONSTRAINT "production_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "milestone" ADD CONSTRAINT "milestone_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "production_construction" ADD CONSTRAINT "production_construction_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "production_construction" ADD CONSTRAINT "production_construction_company_id_version_id_fkey" FOREIGN KEY ("company_id", "version_id") REFERENCES "construction_version"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "note" ADD CONSTRAINT "note_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "note" ADD CONSTRAINT "note_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "note" ADD CONSTRAINT "note_company_id_garment_id_fkey" FOREIGN KEY ("company_id", "garment_id") REFERENCES "garment"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "note" ADD CONSTRAINT "note_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "note" ADD CONSTRAINT "note_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "file" ADD CONSTRAINT "file_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "file" ADD CONSTRAINT "file_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "file" ADD CONSTRAINT "file_company_id_garment_id_fkey" FOREIGN KEY ("company_id", "garment_id") REFERENCES "garment"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "file" ADD CONSTRAINT "file_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entry" ADD CONSTRAINT "audit_entry_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entry" ADD CONSTRAINT "audit_entry_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "audit_entry" ADD CONSTRAINT "audit_entry_company_id_by_id_fkey" FOREIGN KEY ("company_id", "by_id") REFERENCES "membership"("company_id", "user_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "costume" ADD CONSTRAINT "costume_company_id_role_id_fkey" FOREIGN KEY ("company_id", "role_id") REFERENCES "role"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "costume" ADD CONSTRAINT "costume_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "garment_set" ADD CONSTRAINT "garment_set_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_costume_id_fkey" FOREIGN KEY ("company_id", "costume_id") REFERENCES "costume"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_construction_id_fkey" FOREIGN KEY ("company_id", "construction_id") REFERENCES "construction"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_set_id_fkey" FOREIGN KEY ("company_id", "set_id") REFERENCES "garment_set"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_due_id_fkey" FOREIGN KEY ("company_id", "due_id") REFERENCES "milestone"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece" ADD CONSTRAINT "piece_company_id_stock_id_fkey" FOREIGN KEY ("company_id", "stock_id") REFERENCES "garment"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece_material" ADD CONSTRAINT "piece_material_company_id_piece_id_fkey" FOREIGN KEY ("company_id", "piece_id") REFERENCES "piece"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "piece_material" ADD CONSTRAINT "piece_material_company_id_material_id_fkey" FOREIGN KEY ("company_id", "material_id") REFERENCES "material"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task" ADD CONSTRAINT "task_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task_garment" ADD CONSTRAINT "task_garment_company_id_task_id_fkey" FOREIGN KEY ("company_id", "task_id") REFERENCES "task"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "task_garment" ADD CONSTRAINT "task_garment_company_id_use_id_fkey" FOREIGN KEY ("company_id", "use_id") REFERENCES "garment_use"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "worked_minutes" ADD CONSTRAINT "worked_minutes_company_id_task_id_fkey" FOREIGN KEY ("company_id", "task_id") REFERENCES "task"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "worked_minutes" ADD CONSTRAINT "worked_minutes_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_production_id_fkey" FOREIGN KEY ("company_id", "production_id") REFERENCES "production"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_performer_id_fkey" FOREIGN KEY ("company_id", "performer_id") REFERENCES "performer"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_fitter_id_fkey" FOREIGN KEY ("company_id", "fitter_id") REFERENCES "maker"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_room_id_fkey" FOREIGN KEY ("company_id", "room_id") REFERENCES "machine"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting" ADD CONSTRAINT "fitting_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting" ADD CONSTRAINT "fitting_company_id_use_id_fkey" FOREIGN KEY ("company_id", "use_id") REFERENCES "garment_use"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "maker" ADD CONSTRAINT "maker_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "maker_skill" ADD CONSTRAINT "maker_skill_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "maker_hours" ADD CONSTRAINT "maker_hours_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "maker_pace" ADD CONSTRAINT "maker_pace_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "absence" ADD CONSTRAINT "absence_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "absence" ADD CONSTRAINT "absence_company_id_maker_id_fkey" FOREIGN KEY ("company_id", "maker_id") REFERENCES "maker"("company_id", "id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "machine" ADD CONSTRAINT "machine_company_id_workroom_id_fkey" FOREIGN KEY ("company_id", "workroom_id") REFERENCES "workroom"("company_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

