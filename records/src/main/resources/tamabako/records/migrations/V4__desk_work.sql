-- When a pupil was put in the book; empty for those who were there before it was noted.
alter table pupil add column added_at text not null default '';

-- A form of a paper is worked like a sheet: it has a row here, which stays when the paper goes.
alter table sheet add column paper_id text references paper (id) on delete set null;

-- How long the whole of it took.
alter table work add column took_ms integer;

-- Answers that were typed and are not handed in yet, one a line.
create table draft (
    sheet_id text not null references sheet (id) on delete cascade,
    pupil_id text not null references pupil (id) on delete cascade,
    written  text not null,
    took     text not null,
    primary key (sheet_id, pupil_id)
);

create index draft_by_pupil on draft (pupil_id);
