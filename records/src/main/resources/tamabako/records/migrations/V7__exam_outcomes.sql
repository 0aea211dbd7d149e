-- What came of exams that were sat elsewhere, by ladder and grade. What had been foretold is not
-- kept: it follows from the answers of the days before.
create table exam_outcome (
    id       text primary key,
    pupil_id text not null references pupil (id) on delete cascade,
    day      text not null,
    ladder   text not null,
    grade    text not null,
    came     text not null,
    reached  text,
    unique (pupil_id, day, ladder, grade)
);

create table exam_section (
    outcome_id text not null references exam_outcome (id) on delete cascade,
    section    text not null,
    points     integer not null,
    primary key (outcome_id, section)
);

create index exam_outcome_by_day on exam_outcome (day);
