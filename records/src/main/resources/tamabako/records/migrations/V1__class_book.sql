-- Identities are opaque texts made by the program, times are ISO 8601 texts, so that the same tables
-- serve every database.
create table pupil_group (
    id   text primary key,
    name text not null,
    demo integer not null
);

create table pupil (
    id       text primary key,
    group_id text not null references pupil_group (id) on delete cascade,
    name     text not null,
    language text not null,
    demo     integer not null
);

create table sheet (
    id       text primary key,
    title    text not null,
    problems text not null,
    kept_at  text not null,
    demo     integer not null
);

create table work (
    id        text primary key,
    sheet_id  text not null references sheet (id) on delete cascade,
    pupil_id  text references pupil (id) on delete cascade,
    handed_at text not null
);

create table work_answer (
    work_id  text not null references work (id) on delete cascade,
    position integer not null,
    written  text not null,
    mark     text not null,
    primary key (work_id, position)
);

create index work_by_pupil on work (pupil_id, handed_at);
create index work_by_sheet on work (sheet_id, handed_at);
