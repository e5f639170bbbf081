-- AlterTable
ALTER TABLE "dye_entry" ADD COLUMN     "garments" TEXT[];
