package crowdline.sheet.ink;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The cuts of type on paper, each with a file that may be embedded: Open Sans (SIL Open Font Licence), and for letters it lacks
 * DejaVu Sans Condensed (Bitstream Vera licence).
 */
public enum Face {
    REGULAR("/fonts/ttf/OpenSans/OpenSans-Regular.ttf"),
    BOLD("/fonts/ttf/OpenSans/OpenSans-Bold.ttf"),
    MORE_REGULAR("/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed.ttf"),
    MORE_BOLD("/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed-Bold.ttf");

    private final String path;

    /** Letters up to that one are looked up, as nearly all are; beyond it each text is measured. */
    private static final int LOOKED_UP = 0x180;

    private static final float MEASURED_PX = 1000;

    @SuppressWarnings("ImmutableEnumChecker") // a font never changes
    private final Font font;

    @SuppressWarnings("ImmutableEnumChecker") // filled once, below
    private final double[] widths;

    Face(String path) {
        this.path = path;
        try (InputStream in = open()) {
            font = Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(path + " is no font", e);
        }
        widths = new double[LOOKED_UP];
        for (int c = 0; c < LOOKED_UP; c++) {
            widths[c] = measured(Character.toString(c), MEASURED_PX) / MEASURED_PX;
        }
    }

    /** How wide letters are, beside each other from the left. */
    double widthPx(String letters, double sizePx) {
        double wide = 0;
        for (int i = 0; i < letters.length(); i++) {
            char c = letters.charAt(i);
            if (c >= LOOKED_UP) {
                return measured(letters, sizePx);
            }
            wide += widths[c];
        }
        return wide * sizePx;
    }

    private double measured(String letters, double sizePx) {
        GlyphVector glyphs = at(sizePx).createGlyphVector(new FontRenderContext(null, true, true), letters);
        return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX();
    }

    static Face of(boolean strong) {
        return strong ? BOLD : REGULAR;
    }

    /** The one that has what this one lacks. */
    Face more() {
        return this == BOLD || this == MORE_BOLD ? MORE_BOLD : MORE_REGULAR;
    }

    boolean has(int codePoint) {
        return font.canDisplay(codePoint);
    }

    /** For Java to paint with. */
    public Font at(double sizePx) {
        return font.deriveFont((float) sizePx);
    }

    /** Whether a font to paint with is of this face. */
    public boolean isOf(Font painted) {
        return painted.getPSName().equals(font.getPSName());
    }

    /** The file, to be embedded; to be closed by who asks. */
    public InputStream open() throws IOException {
        InputStream in = Face.class.getResourceAsStream(path);
        if (in == null) {
            throw new IOException("the font " + path + " is not among the libraries");
        }
        return in;
    }
}
