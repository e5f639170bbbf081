-- What the schema files cannot say. Closed lists stand in the words of lib/.

-- Checks: the closed lists, in the words of lib/

ALTER TABLE "membership" ADD CONSTRAINT "membership_role_check"
  CHECK ("role" IN ('supervisor', 'cutter', 'maker', 'buyer', 'designer', 'stage management', 'reader'));
ALTER TABLE "production" ADD CONSTRAINT "production_words_check" CHECK ("words" IN ('uk', 'us'));
ALTER TABLE "production" ADD CONSTRAINT "production_lengths_check" CHECK ("lengths" IN ('in', 'cm'));
ALTER TABLE "production" ADD CONSTRAINT "production_currency_check" CHECK ("currency" ~ '^[A-Z]{3}$');
ALTER TABLE "milestone" ADD CONSTRAINT "milestone_kind_check"
  CHECK ("kind" IN ('measuring', 'first fittings', 'second fittings', 'load-in', 'dress parade', 'dress rehearsal', 'opening'));
ALTER TABLE "measurement_sheet" ADD CONSTRAINT "measurement_sheet_body_check" CHECK ("body" IN ('cold', 'warm', 'not noted'));
ALTER TABLE "call" ADD CONSTRAINT "call_kind_check" CHECK ("kind" IN ('span', 'class', 'rehearsal', 'performance', 'rest'));
ALTER TABLE "role" ADD CONSTRAINT "role_kind_check" CHECK ("kind" IN ('principal', 'soloist', 'corps', 'character'));
ALTER TABLE "cast_place" ADD CONSTRAINT "cast_place_standing_check" CHECK ("standing" IN ('cast', 'cover'));
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_standing_check" CHECK ("standing" IN ('cast', 'cover'));
ALTER TABLE "piece" ADD CONSTRAINT "piece_source_check" CHECK ("source" IN ('build', 'pull', 'alter', 'hire', 'buy'));
ALTER TABLE "piece" ADD CONSTRAINT "piece_each_check" CHECK ("each" IN ('performer', 'place', 'role'));
ALTER TABLE "garment" ADD CONSTRAINT "garment_state_check" CHECK ("state" IN ('planned', 'in work', 'in stock', 'away', 'gone'));
ALTER TABLE "garment" ADD CONSTRAINT "garment_condition_check" CHECK ("condition" IN ('good', 'worn', 'repair', 'retired'));
ALTER TABLE "maker" ADD CONSTRAINT "maker_employment_check" CHECK ("employment" IN ('staff', 'casual', 'outworker'));
ALTER TABLE "maker_skill" ADD CONSTRAINT "maker_skill_skill_check"
  CHECK ("skill" IN ('net', 'pattern', 'boned', 'tailoring', 'stretch', 'hand', 'dye', 'millinery', 'fit'));
ALTER TABLE "material" ADD CONSTRAINT "material_kind_check"
  CHECK ("kind" IN ('net', 'foundation', 'cloth', 'lining', 'stretch', 'bone', 'hoop', 'hook', 'bar', 'elastic', 'ribbon', 'thread', 'trim',
    'wire', 'fixing', 'bought', 'dye'));
ALTER TABLE "material" ADD CONSTRAINT "material_measure_check" CHECK ("measure" IN ('length', 'count'));
ALTER TABLE "task" ADD CONSTRAINT "task_origin_check" CHECK ("origin" IN ('operation', 'alteration', 'parade note', 'sample', 'by hand'));
ALTER TABLE "task" ADD CONSTRAINT "task_state_check" CHECK ("state" IN ('open', 'begun', 'done', 'dropped'));
ALTER TABLE "task" ADD CONSTRAINT "task_skill_check"
  CHECK ("skill" IN ('net', 'pattern', 'boned', 'tailoring', 'stretch', 'hand', 'dye', 'millinery', 'fit'));
ALTER TABLE "visit" ADD CONSTRAINT "visit_state_check" CHECK ("state" IN ('asked', 'agreed', 'held', 'missed', 'cancelled'));
ALTER TABLE "fitting" ADD CONSTRAINT "fitting_kind_check" CHECK ("kind" IN ('measure', 'toile', 'first', 'second', 'final', 'cover'));
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_state_check"
  CHECK ("state" IN ('queued', 'running', 'finished', 'stopped', 'failed'));
ALTER TABLE "plan_row" ADD CONSTRAINT "plan_row_reason_check"
  CHECK ("reason" IN ('no one has the skill', 'no time left in the calendars', 'performer never free', 'no room',
    'waits for an unplaced one', 'machine missing'));

-- Checks: time runs forwards, and within the day

ALTER TABLE "milestone" ADD CONSTRAINT "milestone_at_check" CHECK ("at" BETWEEN 0 AND 1440);
ALTER TABLE "call" ADD CONSTRAINT "call_minutes_check" CHECK ("from_minute" >= 0 AND "to_minute" > "from_minute" AND "to_minute" <= 1440);
ALTER TABLE "scene" ADD CONSTRAINT "scene_minutes_check" CHECK ("act" >= 0 AND "starts" >= 0 AND "minutes" >= 0);
ALTER TABLE "maker_hours" ADD CONSTRAINT "maker_hours_weekday_check" CHECK ("weekday" BETWEEN 1 AND 7);
ALTER TABLE "maker_hours" ADD CONSTRAINT "maker_hours_minutes_check"
  CHECK ("from_minute" >= 0 AND "to_minute" > "from_minute" AND "to_minute" <= 1440);
ALTER TABLE "maker" ADD CONSTRAINT "maker_dates_check" CHECK ("ends" >= "starts");
ALTER TABLE "absence" ADD CONSTRAINT "absence_dates_check" CHECK ("to_date" >= "from_date");
ALTER TABLE "absence" ADD CONSTRAINT "absence_minutes_check"
  CHECK ("from_minute" BETWEEN 0 AND 1440 AND "to_minute" BETWEEN 0 AND 1440);
ALTER TABLE "visit" ADD CONSTRAINT "visit_minutes_check"
  CHECK ("from_minute" >= 0 AND "to_minute" > "from_minute" AND "to_minute" <= 1440);
ALTER TABLE "plan_visit" ADD CONSTRAINT "plan_visit_minutes_check" CHECK ("ends" > "starts");
ALTER TABLE "membership" ADD CONSTRAINT "membership_dates_check" CHECK ("ended_at" >= "created_at");

-- Checks: quantities

ALTER TABLE "production" ADD CONSTRAINT "production_budget_check" CHECK ("budget" >= 0);
ALTER TABLE "production" ADD CONSTRAINT "production_revision_check" CHECK ("input_revision" >= 1);
ALTER TABLE "measurement_value" ADD CONSTRAINT "measurement_value_length_check" CHECK ("length" > 0);
ALTER TABLE "place" ADD CONSTRAINT "place_number_check" CHECK ("number" >= 1);
ALTER TABLE "garment_set" ADD CONSTRAINT "garment_set_approval_days_check" CHECK ("approval_days" >= 0);
ALTER TABLE "piece" ADD CONSTRAINT "piece_weight_check" CHECK ("weight" >= 0);
ALTER TABLE "piece" ADD CONSTRAINT "piece_price_check" CHECK ("price" >= 0);
ALTER TABLE "garment_use" ADD CONSTRAINT "garment_use_ordinal_check" CHECK ("ordinal" >= 1);
ALTER TABLE "garment_wearer" ADD CONSTRAINT "garment_wearer_position_check" CHECK ("position" >= 0);
ALTER TABLE "construction_version" ADD CONSTRAINT "construction_version_number_check" CHECK ("number" >= 1);
ALTER TABLE "maker" ADD CONSTRAINT "maker_productive_check" CHECK ("productive" BETWEEN 1 AND 1000);
ALTER TABLE "maker" ADD CONSTRAINT "maker_quantities_check"
  CHECK ("reserved_minutes_per_week" >= 0 AND "cost_per_hour" >= 0 AND "overtime_cost_per_hour" >= 0);
ALTER TABLE "maker_skill" ADD CONSTRAINT "maker_skill_pace_check" CHECK ("pace" > 0);
ALTER TABLE "maker_pace" ADD CONSTRAINT "maker_pace_pace_check" CHECK ("pace" > 0);
ALTER TABLE "machine" ADD CONSTRAINT "machine_count_check" CHECK ("count" >= 0);
ALTER TABLE "material" ADD CONSTRAINT "material_width_check" CHECK ("width" > 0 AND "cuttable" > 0 AND "cuttable" <= "width");
ALTER TABLE "material" ADD CONSTRAINT "material_shares_check" CHECK ("shrinkage" BETWEEN 0 AND 999 AND "spare" >= 0);
ALTER TABLE "offer" ADD CONSTRAINT "offer_pack_check" CHECK ("pack" > 0 AND "minimum_packs" >= 0);
ALTER TABLE "offer" ADD CONSTRAINT "offer_days_check" CHECK ("lead_days" >= 0 AND "inspection_days" >= 0);
ALTER TABLE "offer_price" ADD CONSTRAINT "offer_price_check" CHECK ("from_packs" >= 1 AND "price" >= 0);
ALTER TABLE "lot" ADD CONSTRAINT "lot_quantity_check" CHECK ("quantity" >= 0);
ALTER TABLE "movement" ADD CONSTRAINT "movement_quantity_check" CHECK ("quantity" <> 0);
ALTER TABLE "task" ADD CONSTRAINT "task_minutes_check"
  CHECK ("low_minutes" >= 0 AND "likely_minutes" >= "low_minutes" AND "high_minutes" >= "likely_minutes");
ALTER TABLE "worked_minutes" ADD CONSTRAINT "worked_minutes_minutes_check" CHECK ("minutes" BETWEEN 1 AND 1440);
ALTER TABLE "plan" ADD CONSTRAINT "plan_counts_check" CHECK ("rounds" >= 0 AND "schedules" >= 0);
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_rounds_check" CHECK ("rounds" >= 0 AND "round" >= 0);
ALTER TABLE "file" ADD CONSTRAINT "file_bytes_check" CHECK ("bytes" >= 0);
ALTER TABLE "file" ADD CONSTRAINT "file_sha256_check" CHECK ("sha256" ~ '^[0-9a-f]{64}$');

-- Checks: one thing or the other

ALTER TABLE "measurement_sheet" ADD CONSTRAINT "measurement_sheet_of_check" CHECK (num_nonnulls("performer_id", "size_group_id") = 1);
ALTER TABLE "absence" ADD CONSTRAINT "absence_part_check" CHECK ("to_minute" > "from_minute" OR num_nulls("from_minute", "to_minute") > 0
  OR "to_date" > "from_date");
ALTER TABLE "plan_row" ADD CONSTRAINT "plan_row_placed_check" CHECK (
  ("starts" IS NOT NULL AND "ends" IS NOT NULL AND "ends" >= "starts" AND "reason" IS NULL AND "detail" IS NULL)
  OR ("starts" IS NULL AND "ends" IS NULL AND "reason" IS NOT NULL AND "detail" IS NOT NULL));
ALTER TABLE "plan" ADD CONSTRAINT "plan_current_check" CHECK (NOT "current" OR "published_at" IS NOT NULL);
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_ended_check" CHECK (("state" IN ('queued', 'running')) = ("ended_at" IS NULL));
ALTER TABLE "plan_run" ADD CONSTRAINT "plan_run_error_check" CHECK (("state" = 'failed') = ("error" IS NOT NULL));
ALTER TABLE "note" ADD CONSTRAINT "note_text_check" CHECK ("text" <> '');

-- One of a kind

CREATE UNIQUE INDEX "plan_one_current" ON "plan" ("company_id", "workroom_id") WHERE "current";
CREATE UNIQUE INDEX "plan_run_one_active" ON "plan_run" ("company_id", "production_id") WHERE "state" IN ('queued', 'running');
CREATE UNIQUE INDEX "cast_place_one_cast" ON "cast_place" ("company_id", "cast_id", "place_id") WHERE "standing" = 'cast';
CREATE UNIQUE INDEX "garment_use_one_prototype" ON "garment_use" ("company_id", "piece_id") WHERE "prototype";
