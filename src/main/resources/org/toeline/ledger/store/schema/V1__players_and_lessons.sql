-- Runs on SQLite and on PostgreSQL. Numbers of players and lessons rise in the order of keeping: the order of lessons is
-- that of their numbers and never asks a clock. Times are text in ISO 8601 with offset, as they were stated.

create table counter (
  name varchar(20) primary key,
  value integer not null
);
insert into counter (name, value) values ('player', 0), ('lesson', 0), ('aside', 0);

create table player (
  id integer primary key,
  version integer not null,
  name text,
  handedness varchar(5) not null check (handedness in ('left', 'right')),
  height_m double precision check (height_m > 0),
  born_year integer,
  note text not null,
  changed_at varchar(40) not null,
  changed_by text not null
);
create index player_by_name on player (name);

-- The words of a player's name, folded, so that two letters find a player by an index.
create table player_word (
  word text ${binary} not null,
  player_id integer not null references player (id) on delete cascade,
  primary key (word, player_id)
);
create index player_word_by_player on player_word (player_id);

create table lesson (
  id integer primary key,
  version integer not null,
  player_id integer not null references player (id) on delete cascade,
  recorded varchar(40),
  day varchar(10) ${binary},
  club varchar(20) not null,
  setup text not null,
  place text not null,
  notes text not null,
  changed_at varchar(40) not null,
  changed_by text not null
);
create index lesson_by_player on lesson (player_id, club, id);
create index lesson_by_club on lesson (club, id);
create index lesson_by_day on lesson (day, id);

-- The lesson document with all its marks and references, and what it adds up to: a flipped bit is found out.
create table lesson_document (
  lesson_id integer primary key references lesson (id) on delete cascade,
  sha256 varchar(64) not null,
  document text not null
);
create index lesson_document_by_sum on lesson_document (sha256);

-- The words of a lesson's notes and place, folded.
create table lesson_word (
  word text ${binary} not null,
  lesson_id integer not null references lesson (id) on delete cascade,
  primary key (word, lesson_id)
);
create index lesson_word_by_lesson on lesson_word (lesson_id);

create table take (
  lesson_id integer not null references lesson (id) on delete cascade,
  view varchar(20) not null,
  path text not null,
  time_s double precision,
  size_bytes bigint,
  sha256 varchar(64),
  primary key (lesson_id, view)
);
create index take_by_sum on take (sha256);

-- Findings as they were stated that day, in the unit a person reads, with the range as it was used.
create table finding (
  lesson_id integer not null references lesson (id) on delete cascade,
  reading varchar(40) not null,
  line integer not null,
  value double precision not null,
  u double precision not null check (u > 0),
  low double precision not null,
  high double precision not null,
  unit varchar(10) not null,
  range_low double precision,
  range_high double precision,
  range_aim double precision,
  provenance varchar(20),
  verdict varchar(20),
  is_first integer not null check (is_first in (0, 1)),
  primary key (lesson_id, reading)
);
create index finding_by_verdict on finding (reading, verdict, lesson_id);

-- What one bay had when another had changed the lesson meanwhile: kept beside it until somebody has looked.
create table aside (
  id integer primary key,
  lesson_id integer not null references lesson (id) on delete cascade,
  base_version integer not null,
  sha256 varchar(64) not null,
  document text not null,
  kept_at varchar(40) not null,
  kept_by text not null
);
create index aside_by_lesson on aside (lesson_id);
