-- A phone's lens, calibrated once and used for many views: the “lens” object of a view with the width and height of the
-- pictures it was calibrated with, under a name.
create table lens_profile (
  name text primary key,
  document text not null,
  changed_at varchar(40) not null,
  changed_by text not null
);

-- The shots hit from a lesson's setup, each a JSON object of its figures in the units used inside.
create table shot (
  lesson_id integer not null references lesson (id) on delete cascade,
  number integer not null,
  document text not null,
  primary key (lesson_id, number)
);
