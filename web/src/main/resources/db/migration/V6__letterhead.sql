-- Who issues papers, as it was after every change; the mark is a PNG made here, as base64, empty for none.
create table letterhead (
    number      bigint not null primary key,
    name        text   not null,
    address     text   not null,
    phone       text   not null,
    license     text   not null,
    more        text   not null,
    web_address text   not null,
    paper       text   not null,
    sheets      text   not null,
    mark        text   not null,
    who         text   not null,
    changed_at  bigint not null
);
