-- Wishes that a teacher keeps under a name, ladders of the teacher's own, and papers with their forms.
create table template (
    id      text primary key,
    name    text not null unique,
    fields  text not null,
    kept_at text not null
);

-- The whole file as the teacher wrote it.
create table own_ladder (
    id      text primary key,
    yaml    text not null,
    kept_at text not null
);

-- Forms that were made together, with the file of their ladder as it was then.
create table paper_set (
    id      text primary key,
    ladder  text not null,
    grade   text not null,
    forms   integer not null,
    yaml    text not null,
    made_at text not null
);

-- One form: its printed name, and the paper as the documented format writes it.
create table paper (
    id     text primary key,
    set_id text not null references paper_set (id) on delete cascade,
    form   integer not null,
    paper  text not null
);

create index paper_by_set on paper (set_id, form);
create index paper_set_by_time on paper_set (made_at);
