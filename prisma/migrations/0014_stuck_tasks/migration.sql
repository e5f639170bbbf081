-- AlterTable
ALTER TABLE "task" ADD COLUMN     "stuck" TEXT NOT NULL DEFAULT '';

ALTER TABLE "task" DROP CONSTRAINT "task_state_check";
ALTER TABLE "task" ADD CONSTRAINT "task_state_check" CHECK ("state" IN ('open', 'begun', 'stuck', 'done', 'dropped'));
ALTER TABLE "task" ADD CONSTRAINT "task_stuck_check" CHECK (("state" = 'stuck') = ("stuck" <> ''));
