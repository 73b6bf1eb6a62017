-- Whether the summary on the shelf is of the case as it is now: a program that ends between an edit and its judging leaves
-- it behind. Every case so far was judged after its last edit.

ALTER TABLE case_state ADD COLUMN is_judged INTEGER NOT NULL DEFAULT 1 CHECK (is_judged IN (0, 1));
