-- AlterTable
ALTER TABLE "plan_row" ADD COLUMN     "worked" INTEGER[];

ALTER TABLE "plan_row" ADD CONSTRAINT "plan_row_worked_check" CHECK (cardinality("worked") % 2 = 0);
