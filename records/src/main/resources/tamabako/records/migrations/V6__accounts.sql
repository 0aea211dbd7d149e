-- Who may sign in and who is signed in. Passwords and one-time codes are kept as argon2id hashes,
-- tokens as SHA-256: none can be read back.
create table account (
    teacher_id text primary key references teacher (id) on delete cascade,
    name       text not null unique,
    secret     text not null,
    code_until text,
    disabled   integer not null
);

create table sign_in (
    id         text primary key,
    token      text not null unique,
    teacher_id text not null references teacher (id) on delete cascade,
    address    text not null,
    begun_at   text not null,
    seen_at    text not null
);

-- A desk belongs to one.
create unique index one_owner on teacher (role) where role = 'owner';
create index sign_in_by_teacher on sign_in (teacher_id);
