package crowdline.sheet.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Writes pages as a PDF whose fonts are in it, with bookmarks. The same pages give the same file. */
public final class PagePdf {
    private static final String LANGUAGE = "en-GB";

    private PagePdf() {}

    /** Writes it and leaves the stream open; the count hears each page, and may throw to stop it. */
    public static void write(Pages pages, OutputStream out, Counting count) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfLetters letters = new PdfLetters(document);
            List<PDPage> made = new ArrayList<>();
            for (Page page : pages.pages()) {
                count.is(made.size(), pages.pages().size());
                made.add(page(document, page, letters));
            }
            outline(document, pages.bookmarks(), made);
            describe(document, pages.title());
            document.save(out);
        }
    }

    private static PDPage page(PDDocument document, Page page, PdfLetters letters) throws IOException {
        float width = (float) page.size().widthPt();
        float height = (float) page.size().heightPt();
        PDPage made = new PDPage(new PDRectangle(width, height));
        document.addPage(made);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(letters);
        try {
            PagePainter.paint(g, page);
        } finally {
            g.dispose();
        }
        try (PDPageContentStream content = new PDPageContentStream(document, made)) {
            content.drawForm(g.getXFormObject());
        }
        return made;
    }

    private static void outline(PDDocument document, List<Bookmark> bookmarks, List<PDPage> pages) {
        if (bookmarks.isEmpty()) {
            return;
        }
        PDDocumentOutline outline = new PDDocumentOutline();
        document.getDocumentCatalog().setDocumentOutline(outline);
        List<PDOutlineNode> above = new ArrayList<>(List.of(outline));
        for (Bookmark bookmark : bookmarks) {
            PDPageFitDestination to = new PDPageFitDestination();
            to.setPage(pages.get(bookmark.page()));
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(bookmark.words());
            item.setDestination(to);
            int level = Math.min(bookmark.level(), above.size() - 1);
            above.get(level).addLast(item);
            above.subList(level + 1, above.size()).clear();
            above.add(item);
        }
    }

    private static void describe(PDDocument document, String title) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title);
        about.setCreator("Crowdline");
        document.getDocumentCatalog().setLanguage(LANGUAGE);
        PDViewerPreferences shown = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
        CRC32 of = new CRC32();
        of.update(title.getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(of.getValue());
    }
}
