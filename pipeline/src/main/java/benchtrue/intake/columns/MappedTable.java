package benchtrue.intake.columns;

/** A table and how its files are translated. */
public record MappedTable(Table table, Mapping mapping) {}
