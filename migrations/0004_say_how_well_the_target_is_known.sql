-- How well the distance and the height of a target are known. History is brought into line with the records, which are
-- made again from it by undo and checked against it: nothing was known of any target so far.

ALTER TABLE movement_trial ADD COLUMN target_distance_u_m REAL;
ALTER TABLE movement_trial ADD COLUMN target_height_u_m REAL;
UPDATE change SET after = json_set(after, '$.targetDistanceUM', json('null'), '$.targetHeightUM', json('null'))
  WHERE kind = 'movementTrial' AND op = 'create';
UPDATE change SET before = json_set(before, '$.targetDistanceUM', json('null'), '$.targetHeightUM', json('null'))
  WHERE kind = 'movementTrial' AND op = 'remove';
