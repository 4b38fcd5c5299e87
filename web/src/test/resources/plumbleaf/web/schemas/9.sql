-- What version 9 could hold. Its migration was released and is never changed again: f51ecd1cf91a26297cda6857b63d03c5db4b6e1fdcb5b14ce0c39d76b59626fc
insert into house_build values ('gate', 'Lane gate', '{"thing":{"leaf":{"infill":"6''"}},"build":{}}', 'Wen Hallow', 8000);
