-- What version 7 could hold. Its migration was released and is never changed again: 10b8180668c43381e1d0ee02e687f31115b667488c2d018f648538e02f094c57
insert into house_days_revision values (1, 'kind,who,from,through', 'a first day off', 'Wen Hallow', 7000);
