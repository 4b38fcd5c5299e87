package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/** A length in which a section, rail, picket or post is sold. */
public record StockLength(String item, Length length) {}
