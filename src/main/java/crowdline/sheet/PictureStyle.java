package crowdline.sheet;

/** Colours and line styles of pictures on paper; each pair of colour and style is one figure's. */
final class PictureStyle {
    static final int PAPER = 0xFFFFFF;
    static final int SKY = 0xF6F8FA;
    static final int TEXT = 0x16202A;
    static final int SOFT = 0x56636F;
    static final int GRID = 0xDCE2E8;
    static final int GROUND = 0x6B5B43;
    static final int LIMIT = 0x9A3412;
    /** The one colour of pages, as dark as black where there is none. */
    static final int ACCENT = 0x0A4A87;

    static final int CLOUD = 0x3F6C8F;

    /** Dark enough for lines on paper and apart from each other also where red and green look alike; tuned by eye. */
    private static final int[] LINES = {0x0B5FA5, 0xB3480B, 0x1B7F5C, 0x8A2E7A, 0x4B4B4B, 0x9B7A00};

    private static final double DASH_PX = 7;

    private PictureStyle() {}

    static int lineRgb(int index) {
        return LINES[index % LINES.length];
    }

    /** Every second turn through the colours is dashed. */
    static double dashPx(int index) {
        return index / LINES.length % 2 == 0 ? 0 : DASH_PX;
    }
}
