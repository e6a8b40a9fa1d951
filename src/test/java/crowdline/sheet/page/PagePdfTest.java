package crowdline.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.sheet.ink.Ink;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A PDF read back by the library that others read PDFs with. */
class PagePdfTest {
    private static Pages page(String... lines) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            blocks.add(new Block(
                    "line",
                    new Area(50, 60 + 30 * i, 400, 20),
                    List.of(new Ink.Words(lines[i], 50, 75 + 30 * i, 14, i % 2 == 1, Ink.Anchor.START, 0))));
        }
        return new Pages("A day: cards", List.of(new Page(PaperSize.A4, List.of(), blocks)), List.of());
    }

    private static byte[] pdf(Pages pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PagePdf.write(pages, out, Counting.UNHEARD);
        return out.toByteArray();
    }

    private static String read(Pages pages) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(pages))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The first figure is off: a difficult, fluffy half Cuban",
                "Zoë Łukasz Þórdís Çelik Ňuňez Ştefan Đorđe",
                "Αλέξης Жанна Їжак",
                "דנה כהן",
                "سلمى الطيار",
                "محمد لاعب",
                "Հայկ გიორგი"
            })
    void wordsStayTextWhateverTheirLetters(String words) throws IOException {
        assertThat(read(page(words, "under it"))).contains(words, "under it");
    }

    @Test
    void namesFromTheRightStandAmongWordsFromTheLeft() throws IOException {
        assertThat(read(page("Now דנה כהן in the blue one"))).contains("Now", "דנה", "כהן", "in the blue one");
    }

    @Test
    void everyFontIsInTheFile() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(page("light", "strong", "دانا", "سلمى")))) {
            List<PDFont> fonts = fonts(document.getPage(0).getResources());
            assertThat(fonts).hasSizeGreaterThanOrEqualTo(4).allSatisfy(f -> {
                assertThat(f.isEmbedded()).as(f.getName()).isTrue();
                assertThat(f.getName()).matches("[A-Z]{6}\\+(OpenSans|DejaVuSansCondensed).*");
            });
        }
    }

    private static List<PDFont> fonts(PDResources resources) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form) {
                fonts.addAll(fonts(form.getResources()));
            }
        }
        return fonts;
    }

    @Test
    void titleLanguageSizeAndBookmarksAreInTheFile() throws IOException {
        Page one = page("one").pages().get(0);
        Pages pages = new Pages(
                "A day: cards",
                List.of(one, one, one),
                List.of(
                        new Bookmark("Act A", 0, 0),
                        new Bookmark("loop", 1, 1),
                        new Bookmark("spin", 2, 1),
                        new Bookmark("Act B", 2, 0)));
        try (PDDocument document = Loader.loadPDF(pdf(pages))) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("A day: cards");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
            for (PDPage page : document.getPages()) {
                assertThat((double) page.getMediaBox().getWidth()).isCloseTo(595.28, within(0.01));
                assertThat((double) page.getMediaBox().getHeight()).isCloseTo(841.89, within(0.01));
            }
            List<String> marks = new ArrayList<>();
            for (PDOutlineItem act :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                marks.add(act.getTitle());
                for (PDOutlineItem figure : act.children()) {
                    PDPage to = figure.findDestinationPage(document);
                    marks.add(
                            "  " + figure.getTitle() + " " + document.getPages().indexOf(to));
                }
            }
            assertThat(marks).containsExactly("Act A", "  loop 1", "  spin 2", "Act B");
        }
    }

    @Test
    void theSamePagesGiveTheSameFile() throws IOException {
        assertThat(pdf(page("one"))).isEqualTo(pdf(page("one")));
    }

    @Test
    void aLetterThatNoFontHasIsSaidAndStandsAsABox() throws IOException {
        Pages pages = page("Pilot 山田", "loop");
        assertThat(pages.lacking())
                .hasValueSatisfying(said -> assertThat(said).contains("山 (U+5C71)", "田 (U+7530)", "□"));
        assertThat(read(pages)).contains("Pilot □□");
        assertThat(page("Zoë דנה").lacking()).isEmpty();
    }

    @Test
    void theScreenAndTheFileShowTheSame() throws IOException {
        Pages pages = page("The first figure is a loop", "סלמה and Zoë fly it");
        BufferedImage screen = new BufferedImage(595, 842, BufferedImage.TYPE_INT_RGB);
        java.awt.Graphics2D g = screen.createGraphics();
        g.setColor(java.awt.Color.WHITE);
        g.fillRect(0, 0, 595, 842);
        PagePainter.paint(g, pages.pages().get(0));
        g.dispose();
        BufferedImage file;
        try (PDDocument document = Loader.loadPDF(pdf(pages))) {
            file = new PDFRenderer(document).renderImageWithDPI(0, 72);
        }
        double differs = 0;
        double inked = 0;
        for (int x = 40; x < 300; x++) {
            for (int y = 50; y < 120; y++) {
                int a = screen.getRGB(x, y) & 0xFF;
                int b = file.getRGB(x, y) & 0xFF;
                differs += Math.abs(a - b);
                inked += 255 - a;
            }
        }
        // Edges of letters are smoothed in two ways; words elsewhere, or others, would differ by twice their ink.
        assertThat(differs).isLessThan(0.45 * inked);
    }

    @Test
    void writingCanBeStopped() {
        assertThatThrownBy(() -> PagePdf.write(page("one"), new ByteArrayOutputStream(), (number, all) -> {
                    throw new CancellationException();
                }))
                .isInstanceOf(CancellationException.class);
    }
}
