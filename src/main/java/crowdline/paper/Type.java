package crowdline.paper;

import crowdline.sheet.page.Style;

/** The type on paper: a few sizes, black, and one accent that is as dark as black where there is no colour. */
record Type(double factor) {
    /** How much larger large type is. */
    static final double LARGE = 1.3;

    static final int BLACK = 0x000000;
    static final int SOFT = 0x434B53;
    static final int ACCENT = 0x0A4A87;
    static final int RULE = 0xB8C0C8;
    static final int RED = 0xB3001B;

    Style title() {
        return new Style(24 * factor, true, BLACK);
    }

    Style head() {
        return new Style(16 * factor, true, BLACK);
    }

    Style name() {
        return new Style(13 * factor, true, BLACK);
    }

    Style words() {
        return new Style(11.5 * factor, false, BLACK);
    }

    Style strongWords() {
        return new Style(11.5 * factor, true, BLACK);
    }

    Style small() {
        return new Style(9.5 * factor, false, SOFT);
    }

    Style label() {
        return new Style(9 * factor, true, ACCENT);
    }

    double pt(double size) {
        return size * factor;
    }
}
