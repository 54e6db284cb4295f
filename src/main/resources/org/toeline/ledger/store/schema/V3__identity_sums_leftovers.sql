-- A lesson's identity: its own wherever it goes, as numbers are not, which repeat after a restore and on another server.
alter table lesson add column identity varchar(36);
update lesson set identity = ${uuid};
create unique index lesson_by_identity on lesson (identity);

-- Where this clip was found, or chosen at the desk: a document's own words open no file. Names that were kept so far are taken
-- at their word once.
alter table take add column found text;
update take set found = path where path like '/%' or path like '_:%';

-- What all rows of a lesson or of a player add up to.
create table row_sum (
  kind varchar(10) not null,
  id integer not null,
  sha256 varchar(64) not null,
  primary key (kind, id)
);

-- What a deletion has still to take away, without a name in it: written with the deletion, and let go when it is done.
create table leftover (
  id integer primary key,
  kind varchar(20) not null,
  what varchar(80) not null
);
-- Sums of what was kept before there were any are the first thing to be made up for.
insert into leftover (id, kind, what) values (1, 'seal', '');
insert into counter (name, value) values ('leftover', 1);

-- Nothing ever read it: calibrated lenses are in a file of each machine.
drop table lens_profile;

-- “Groß” is found by “gross”.
insert into player_word (word, player_id)
  select replace(word, 'ß', 'ss'), player_id from player_word where word like '%ß%'
  on conflict do nothing;
insert into lesson_word (word, lesson_id)
  select replace(word, 'ß', 'ss'), lesson_id from lesson_word where word like '%ß%'
  on conflict do nothing;
