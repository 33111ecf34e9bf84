package benchtrue.intake;

/** A table and how its files are translated. */
record MappedTable(Table table, Mapping mapping) {}
