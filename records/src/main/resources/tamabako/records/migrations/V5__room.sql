-- Rooms that are open. What a room was opened with and what happened in it are texts that the room
-- itself reads; they go when the room is closed, and the answers stay as work.
create table room (
    id        text primary key,
    code      text not null,
    setup     text not null,
    opened_at text not null,
    last      integer not null
);

create unique index room_by_code on room (code);

-- What happened, as it was kept together: one event a line. The number is that of the last of them.
create table room_part (
    room_id text not null references room (id) on delete cascade,
    number  integer not null,
    events  text not null,
    primary key (room_id, number)
);

-- The figures that a pupil types beside the name, drawn by the desk.
create table pupil_pin (
    pupil_id text primary key references pupil (id) on delete cascade,
    pin      text not null
);
