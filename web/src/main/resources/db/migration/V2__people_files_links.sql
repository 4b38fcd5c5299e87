-- Who may come in, what lies with a job, and what a customer sees. Of every secret that leaves the house only its SHA-256 is kept.
alter table person add column closed_at bigint;

create table setting (
    name  text not null primary key,
    value text not null
);

-- A link with which somebody sets their own password, once.
create table invitation (
    token      text   not null primary key,
    person     text   not null references person (id),
    expires_at bigint not null,
    used_at    bigint
);

create table api_token (
    id         text   not null primary key,
    token      text   not null unique,
    person     text   not null references person (id),
    label      text   not null,
    made_at    bigint not null,
    revoked_at bigint
);

create table refused_sign_in (
    id      text   not null primary key,
    sign_in text   not null,
    address text   not null,
    made_at bigint not null
);
create index refused_sign_in_by_time on refused_sign_in (made_at);

create table audit (
    id      text   not null primary key,
    made_at bigint not null,
    who     text   not null,
    what    text   not null,
    about   text   not null
);
create index audit_by_time on audit (made_at);

create table attachment (
    id         text     not null primary key,
    job        text     not null references job (id),
    part       text     not null,
    name       text     not null,
    kind       text     not null,
    size       bigint   not null,
    digest     text     not null,
    who        text     not null,
    made_at    bigint   not null,
    trashed_at bigint,
    content    ${bytes} not null
);
create index attachment_by_job on attachment (job);

-- A customer sees the papers of one revision, so that what they accept cannot change under them.
create table customer_link (
    id         text   not null primary key,
    token      text   not null unique,
    job        text   not null,
    revision   bigint not null,
    papers     text   not null,
    who        text   not null,
    made_at    bigint not null,
    expires_at bigint not null,
    revoked_at bigint,
    foreign key (job, revision) references revision (job, number)
);

create table acceptance (
    link    text   not null primary key references customer_link (id),
    name    text   not null,
    said_on text   not null,
    made_at bigint not null
);

-- Sign-ins, so that any node of several knows them. The shape is that of Spring Session.
create table spring_session (
    primary_id            char(36) not null primary key,
    session_id            char(36) not null,
    creation_time         bigint   not null,
    last_access_time      bigint   not null,
    max_inactive_interval int      not null,
    expiry_time           bigint   not null,
    principal_name        varchar(100)
);
create unique index spring_session_ix1 on spring_session (session_id);
create index spring_session_ix2 on spring_session (expiry_time);
create index spring_session_ix3 on spring_session (principal_name);

create table spring_session_attributes (
    session_primary_id char(36)     not null references spring_session (primary_id) on delete cascade,
    attribute_name     varchar(200) not null,
    attribute_bytes    ${bytes}     not null,
    primary key (session_primary_id, attribute_name)
);
