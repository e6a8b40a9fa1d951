package crowdline.sheet.page;

import crowdline.sheet.ink.Face;
import crowdline.sheet.ink.InkPainter;
import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/** Writes what is painted into a PDF as text, in the faces it was painted in. */
final class PdfLetters implements IPdfBoxGraphics2DFontTextDrawer {
    private final PDDocument document;
    private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

    PdfLetters(PDDocument document) {
        this.document = document;
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv to) {
        return true;
    }

    @Override
    public void drawText(AttributedCharacterIterator text, IFontTextDrawerEnv to) throws IOException {
        Font painted = text.getAttribute(TextAttribute.FONT) instanceof Font own ? own : to.getFont();
        PDPageContentStream content = to.getContentStream();
        to.applyPaint(to.getPaint(), null);
        content.beginText();
        content.setFont(font(painted), painted.getSize2D());
        content.setTextMatrix(Matrix.getScaleInstance(1, -1));
        content.showText(InkPainter.letters(whole(text)));
        content.endText();
    }

    private static String whole(AttributedCharacterIterator text) {
        StringBuilder all = new StringBuilder();
        for (char c = text.first(); c != CharacterIterator.DONE; c = text.next()) {
            all.append(c);
        }
        return all.toString();
    }

    private PDFont font(Font painted) throws IOException {
        for (Face face : Face.values()) {
            if (face.isOf(painted)) {
                PDFont known = embedded.get(face);
                if (known == null) {
                    try (InputStream in = face.open()) {
                        known = PDType0Font.load(document, in, true);
                    }
                    embedded.put(face, known);
                }
                return known;
            }
        }
        throw new IOException(painted.getPSName() + " is no face for paper");
    }

    @Override
    public FontMetrics getFontMetrics(Font font, IFontTextDrawerEnv to) {
        return to.getCalculationGraphics().getFontMetrics(font);
    }
}
