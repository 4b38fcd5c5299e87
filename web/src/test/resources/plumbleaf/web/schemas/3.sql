-- What version 3 could hold. Its migration was released and is never changed again: ca27a87d4bc26c41a0c633b7301fe89e92fc2f629660a7b6b74dce066b2b5539
insert into price_book_table (book, name, content, who, changed_at) values ('ours', 'materials.csv', 'item,price
"2x4, cedar",7.10
', 'Wen Hallow', 1130);
