-- Price books of the house: the tables of each as they were brought in. A job names its book; what it was quoted at it keeps itself.
create table price_book_table (
    book       text   not null,
    name       text   not null,
    content    text   not null,
    who        text   not null,
    changed_at bigint not null,
    primary key (book, name)
);
