-- Texts, whole numbers and nothing else, so that the same tables serve every database.
alter table pupil add column kana text not null default '';
alter table pupil add column born integer;
alter table pupil add column grade text not null default '';
alter table pupil add column roster_id text not null default '';
alter table pupil add column no_flashing integer not null default 0;
alter table pupil add column extra_time integer not null default 0;
alter table pupil add column pace integer not null default 100;

alter table work_answer add column took_ms integer;

-- Moments get nine places of a second each, so that their order as texts is their order in time.
update sheet set kept_at =
    substr(replace(kept_at, 'Z', case when kept_at like '%.%' then '' else '.' end) || '000000000', 1, 29) || 'Z';
update work set handed_at =
    substr(replace(handed_at, 'Z', case when handed_at like '%.%' then '' else '.' end) || '000000000', 1, 29) || 'Z';

create table teacher (
    id   text primary key,
    name text not null,
    role text not null,
    demo integer not null
);

create table handout (
    id            text primary key,
    sheet_id      text not null references sheet (id) on delete cascade,
    group_id      text not null references pupil_group (id) on delete cascade,
    pupil_id      text references pupil (id) on delete cascade,
    handed_out_at text not null
);

create table attendance (
    pupil_id text not null references pupil (id) on delete cascade,
    day      text not null,
    how      text not null,
    primary key (pupil_id, day)
);

create table note (
    id         text primary key,
    pupil_id   text not null references pupil (id) on delete cascade,
    written_at text not null,
    words      text not null
);

create table result (
    id          text primary key,
    pupil_id    text not null references pupil (id) on delete cascade,
    kind        text not null,
    name        text not null,
    day         text not null,
    points      integer,
    most_points integer,
    outcome     text not null
);

create table setting (
    name  text primary key,
    value text not null
);

create index pupil_by_group on pupil (group_id);
create index handout_by_sheet on handout (sheet_id);
create index handout_by_pupil on handout (pupil_id);
create index attendance_by_day on attendance (day);
create index note_by_pupil on note (pupil_id, written_at);
create index result_by_pupil on result (pupil_id, day);
