-- What version 6 could hold. Its migration was released and is never changed again: adea330dc17e16722f516198d7f079a81c3d8b37ff072ff61a706eee3fc2c01f
insert into letterhead values (1, 'Hallow and Venn', '14 Tarn Steps', '555 0142', 'L-17', '', '', 'letter', 'tabloid', '', 'Wen Hallow', 7000);
