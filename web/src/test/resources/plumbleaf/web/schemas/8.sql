-- What version 8 could hold. Its migration was released and is never changed again: 7809caaadab54273975fcd0ac9751e5695dd4d2abe7b3535a95f38b7b9da85bc
update acceptance set ticked = 'a lock, $42.00';
