-- Numbers other than lengths, in the unit of their blank.
ALTER TABLE practice_figure ADD COLUMN amount REAL;
