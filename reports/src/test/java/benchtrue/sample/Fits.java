package benchtrue.sample;

/** Which instruments a repair type is done on. */
enum Fits {
    ANY,
    ACOUSTIC,
    ELECTRIC;

    boolean takes(InstrumentClass instrument) {
        return this == ANY
                || (this == ACOUSTIC && instrument.acoustic())
                || (this == ELECTRIC && instrument.electric());
    }
}
