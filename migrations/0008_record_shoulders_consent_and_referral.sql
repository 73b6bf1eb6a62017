-- The athlete's earlier measurements, consent and medicines, what a referral letter needs, how an injury is coded and
-- cleared, and the fuller record of an unstable shoulder. Only adds: nothing of these was known so far. History is brought
-- into line with the records, which are made again from it by undo and checked against it.

ALTER TABLE athlete ADD COLUMN identifier TEXT NOT NULL DEFAULT '';
ALTER TABLE athlete ADD COLUMN age_band TEXT;
ALTER TABLE athlete ADD COLUMN leg_length_left_m REAL CHECK (leg_length_left_m > 0);
ALTER TABLE athlete ADD COLUMN leg_length_right_m REAL CHECK (leg_length_right_m > 0);
ALTER TABLE athlete ADD COLUMN arm_length_left_m REAL CHECK (arm_length_left_m > 0);
ALTER TABLE athlete ADD COLUMN arm_length_right_m REAL CHECK (arm_length_right_m > 0);
ALTER TABLE athlete ADD COLUMN limbs_on TEXT;
ALTER TABLE athlete ADD COLUMN training_years REAL CHECK (training_years >= 0);
ALTER TABLE athlete ADD COLUMN weekly_sessions INTEGER CHECK (weekly_sessions >= 0);
ALTER TABLE athlete ADD COLUMN weekly_hours REAL CHECK (weekly_hours >= 0);
ALTER TABLE athlete ADD COLUMN consent_withdrawn_on TEXT;
ALTER TABLE athlete ADD COLUMN guardian_name TEXT NOT NULL DEFAULT '';
ALTER TABLE athlete ADD COLUMN guardian_consent_on TEXT;
ALTER TABLE athlete ADD COLUMN red_flags_cleared_on TEXT;
ALTER TABLE athlete ADD COLUMN medicines TEXT NOT NULL DEFAULT '';
ALTER TABLE athlete ADD COLUMN allergies TEXT NOT NULL DEFAULT '';
ALTER TABLE athlete ADD COLUMN other_history TEXT NOT NULL DEFAULT '';
ALTER TABLE athlete ADD COLUMN access_needs TEXT NOT NULL DEFAULT '';
UPDATE change SET after = json_set(after,
    '$.identifier', '', '$.ageBand', json('null'), '$.legLengthLeftM', json('null'),
    '$.legLengthRightM', json('null'), '$.armLengthLeftM', json('null'),
    '$.armLengthRightM', json('null'), '$.limbsOn', json('null'), '$.trainingYears', json('null'),
    '$.weeklySessions', json('null'), '$.weeklyHours', json('null'),
    '$.consentWithdrawnOn', json('null'), '$.guardianName', '', '$.guardianConsentOn', json('null'),
    '$.redFlagsClearedOn', json('null'), '$.medicines', '', '$.allergies', '', '$.otherHistory', '',
    '$.accessNeeds', '')
  WHERE kind = 'athlete' AND op = 'create';
UPDATE change SET before = json_set(before,
    '$.identifier', '', '$.ageBand', json('null'), '$.legLengthLeftM', json('null'),
    '$.legLengthRightM', json('null'), '$.armLengthLeftM', json('null'),
    '$.armLengthRightM', json('null'), '$.limbsOn', json('null'), '$.trainingYears', json('null'),
    '$.weeklySessions', json('null'), '$.weeklyHours', json('null'),
    '$.consentWithdrawnOn', json('null'), '$.guardianName', '', '$.guardianConsentOn', json('null'),
    '$.redFlagsClearedOn', json('null'), '$.medicines', '', '$.allergies', '', '$.otherHistory', '',
    '$.accessNeeds', '')
  WHERE kind = 'athlete' AND op = 'remove';

ALTER TABLE case_record ADD COLUMN practitioner_role TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN practitioner_contact TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN copies_to TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN tried_so_far TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN effects TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN told_and_wanted TEXT NOT NULL DEFAULT '';
ALTER TABLE case_record ADD COLUMN consent_to_referral INTEGER CHECK (consent_to_referral IN (0, 1));
ALTER TABLE case_record ADD COLUMN consent_to_referral_on TEXT;
UPDATE change SET after = json_set(after,
    '$.practitionerRole', '', '$.practitionerContact', '', '$.copiesTo', '', '$.triedSoFar', '',
    '$.effects', '', '$.toldAndWanted', '', '$.consentToReferral', json('null'),
    '$.consentToReferralOn', json('null'))
  WHERE kind = 'case' AND op = 'create';
UPDATE change SET before = json_set(before,
    '$.practitionerRole', '', '$.practitionerContact', '', '$.copiesTo', '', '$.triedSoFar', '',
    '$.effects', '', '$.toldAndWanted', '', '$.consentToReferral', json('null'),
    '$.consentToReferralOn', json('null'))
  WHERE kind = 'case' AND op = 'remove';

ALTER TABLE injury ADD COLUMN tissue TEXT;
ALTER TABLE injury ADD COLUMN code TEXT NOT NULL DEFAULT '';
ALTER TABLE injury ADD COLUMN mode TEXT;
ALTER TABLE injury ADD COLUMN contact TEXT;
ALTER TABLE injury ADD COLUMN recurrence TEXT;
ALTER TABLE injury ADD COLUMN surgery TEXT NOT NULL DEFAULT '';
ALTER TABLE injury ADD COLUMN cleared_role TEXT NOT NULL DEFAULT '';
ALTER TABLE injury ADD COLUMN cleared_for TEXT NOT NULL DEFAULT '';
ALTER TABLE injury ADD COLUMN cleared_until TEXT;
UPDATE change SET after = json_set(after,
    '$.tissue', json('null'), '$.code', '', '$.mode', json('null'), '$.contact', json('null'),
    '$.recurrence', json('null'), '$.surgery', '', '$.clearedRole', '', '$.clearedFor', '',
    '$.clearedUntil', json('null'))
  WHERE kind = 'injury' AND op = 'create';
UPDATE change SET before = json_set(before,
    '$.tissue', json('null'), '$.code', '', '$.mode', json('null'), '$.contact', json('null'),
    '$.recurrence', json('null'), '$.surgery', '', '$.clearedRole', '', '$.clearedFor', '',
    '$.clearedUntil', json('null'))
  WHERE kind = 'injury' AND op = 'remove';

CREATE TABLE body_measurement (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  athlete_id TEXT NOT NULL REFERENCES athlete (id) ON DELETE CASCADE,
  measure TEXT NOT NULL,
  side TEXT NOT NULL,
  value_si REAL NOT NULL CHECK (value_si > 0),
  u_si REAL CHECK (u_si >= 0),
  taken_on TEXT
) STRICT;
CREATE INDEX body_measurement_by_athlete ON body_measurement (athlete_id);

CREATE TABLE shoulder_record (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  injury_id TEXT NOT NULL REFERENCES injury (id) ON DELETE CASCADE,
  is_multidirectional INTEGER CHECK (is_multidirectional IN (0, 1)),
  can_slip_at_will INTEGER CHECK (can_slip_at_will IN (0, 1)),
  examined_on TEXT,
  examiner TEXT NOT NULL,
  passive_abduction_rad REAL CHECK (passive_abduction_rad >= 0),
  other_passive_abduction_rad REAL CHECK (other_passive_abduction_rad >= 0),
  external_rotation_rad REAL CHECK (external_rotation_rad >= 0),
  other_external_rotation_rad REAL CHECK (other_external_rotation_rad >= 0),
  sulcus TEXT,
  sulcus_stays_in_rotation INTEGER CHECK (sulcus_stays_in_rotation IN (0, 1)),
  sulcus_is_symptom INTEGER CHECK (sulcus_is_symptom IN (0, 1)),
  anterior_shift TEXT,
  posterior_shift TEXT,
  little_finger_left INTEGER CHECK (little_finger_left IN (0, 1)),
  little_finger_right INTEGER CHECK (little_finger_right IN (0, 1)),
  thumb_left INTEGER CHECK (thumb_left IN (0, 1)),
  thumb_right INTEGER CHECK (thumb_right IN (0, 1)),
  elbow_left INTEGER CHECK (elbow_left IN (0, 1)),
  elbow_right INTEGER CHECK (elbow_right IN (0, 1)),
  knee_left INTEGER CHECK (knee_left IN (0, 1)),
  knee_right INTEGER CHECK (knee_right IN (0, 1)),
  palms_to_floor INTEGER CHECK (palms_to_floor IN (0, 1)),
  is_prepubertal INTEGER CHECK (is_prepubertal IN (0, 1)),
  was_imaged INTEGER CHECK (was_imaged IN (0, 1)),
  imaged_on TEXT,
  imaging_report TEXT NOT NULL,
  glenoid_width_m REAL CHECK (glenoid_width_m >= 0),
  anterior_defect_m REAL CHECK (anterior_defect_m >= 0),
  lesion_width_m REAL CHECK (lesion_width_m >= 0),
  bone_bridge_m REAL CHECK (bone_bridge_m >= 0),
  glenoid_loss_ratio REAL CHECK (glenoid_loss_ratio >= 0),
  tuberosity_fracture INTEGER CHECK (tuberosity_fracture IN (0, 1)),
  age_at_surgery_years REAL CHECK (age_at_surgery_years >= 0),
  is_competitive INTEGER CHECK (is_competitive IN (0, 1)),
  is_contact_or_overhead INTEGER CHECK (is_contact_or_overhead IN (0, 1)),
  is_hyperlax_shoulder INTEGER CHECK (is_hyperlax_shoulder IN (0, 1)),
  head_dent_visible INTEGER CHECK (head_dent_visible IN (0, 1)),
  lower_outline_lost INTEGER CHECK (lower_outline_lost IN (0, 1)),
  out_of_joint INTEGER CHECK (out_of_joint IN (0, 1)),
  fracture_suspected INTEGER CHECK (fracture_suspected IN (0, 1)),
  vessel_signs INTEGER CHECK (vessel_signs IN (0, 1)),
  nerve_loss INTEGER CHECK (nerve_loss IN (0, 1)),
  open_wound INTEGER CHECK (open_wound IN (0, 1)),
  hot_joint_with_fever INTEGER CHECK (hot_joint_with_fever IN (0, 1)),
  locked_after_seizure INTEGER CHECK (locked_after_seizure IN (0, 1)),
  chest_or_belly_signs INTEGER CHECK (chest_or_belly_signs IN (0, 1)),
  head_or_neck_signs INTEGER CHECK (head_or_neck_signs IN (0, 1)),
  first_without_imaging INTEGER CHECK (first_without_imaging IN (0, 1)),
  over_forty_and_weak INTEGER CHECK (over_forty_and_weak IN (0, 1)),
  nerve_loss_persists INTEGER CHECK (nerve_loss_persists IN (0, 1)),
  tumour_signs INTEGER CHECK (tumour_signs IN (0, 1)),
  trouble_after_surgery INTEGER CHECK (trouble_after_surgery IN (0, 1)),
  locking INTEGER CHECK (locking IN (0, 1)),
  apprehension_stops_sport INTEGER CHECK (apprehension_stops_sport IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX shoulder_record_by_injury ON shoulder_record (injury_id);

CREATE TABLE instability_event (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  injury_id TEXT NOT NULL REFERENCES injury (id) ON DELETE CASCADE,
  happened_on TEXT,
  severity TEXT,
  etiology TEXT,
  direction TEXT,
  mechanism TEXT NOT NULL,
  reduction TEXT,
  under_sedation INTEGER CHECK (under_sedation IN (0, 1)),
  out_of_joint_s REAL CHECK (out_of_joint_s >= 0),
  after_seizure_or_shock INTEGER CHECK (after_seizure_or_shock IN (0, 1)),
  during_sleep INTEGER CHECK (during_sleep IN (0, 1)),
  numb_or_weak_after INTEGER CHECK (numb_or_weak_after IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX instability_event_by_injury ON instability_event (injury_id);

CREATE TABLE neurovascular_check (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  injury_id TEXT NOT NULL REFERENCES injury (id) ON DELETE CASCADE,
  timing TEXT NOT NULL,
  checked_on TEXT,
  checked_at TEXT NOT NULL,
  examiner TEXT NOT NULL,
  axillary_strength TEXT,
  axillary_feeling TEXT,
  suprascapular TEXT,
  musculocutaneous TEXT,
  radial_nerve TEXT,
  median_nerve TEXT,
  ulnar_nerve TEXT,
  radial_pulse TEXT,
  brachial_pulse TEXT,
  capillary_refill TEXT,
  warmth_and_colour TEXT,
  armpit_swelling INTEGER CHECK (armpit_swelling IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX neurovascular_check_by_injury ON neurovascular_check (injury_id);

CREATE TABLE provocation_test (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  injury_id TEXT NOT NULL REFERENCES injury (id) ON DELETE CASCADE,
  test TEXT NOT NULL,
  side TEXT NOT NULL,
  tested_on TEXT,
  examiner TEXT NOT NULL,
  apprehension INTEGER CHECK (apprehension IN (0, 1)),
  pain_nrs INTEGER CHECK (pain_nrs BETWEEN 0 AND 10),
  clunk INTEGER CHECK (clunk IN (0, 1)),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX provocation_test_by_injury ON provocation_test (injury_id);

CREATE TABLE questionnaire_total (
  place INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  injury_id TEXT NOT NULL REFERENCES injury (id) ON DELETE CASCADE,
  questionnaire TEXT NOT NULL,
  total_points REAL NOT NULL CHECK (total_points >= 0),
  taken_on TEXT,
  language TEXT NOT NULL,
  version TEXT NOT NULL
) STRICT;
CREATE INDEX questionnaire_total_by_injury ON questionnaire_total (injury_id);
