package crowdline.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.ink.Ink;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.Printable;
import java.util.List;
import org.junit.jupiter.api.Test;

class PagePrintTest {
    private static final Page EDGED =
            new Page(PaperSize.A4, List.of(Ink.rectangle(0, 0, 595.276, 841.89, 0xB3001B)), List.of());
    private final PagePrint print = new PagePrint(new Pages("p", List.of(EDGED, EDGED), List.of()), Counting.UNHEARD);

    @Test
    void everyPageIsPrintedOnPaperOfItsSize() {
        assertThat(print.getNumberOfPages()).isEqualTo(2);
        assertThat(print.getPageFormat(1).getWidth()).isEqualTo(595.276);
        assertThat(print.getPageFormat(1).getHeight()).isEqualTo(841.89);
        BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
        assertThat(print.print(image.createGraphics(), print.getPageFormat(0), 2))
                .isEqualTo(Printable.NO_SUCH_PAGE);
    }

    @Test
    void onOtherPaperThePageIsAsLargeAsItFits() {
        Paper letter = new Paper();
        letter.setSize(612, 792);
        letter.setImageableArea(18, 18, 576, 756);
        PageFormat format = new PageFormat();
        format.setPaper(letter);
        BufferedImage image = new BufferedImage(612, 792, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 612, 792);
        assertThat(print.print(g, format, 0)).isEqualTo(Printable.PAGE_EXISTS);
        // 792 / 841.89 of the width, in the middle: 26 points of white at each side.
        assertThat(image.getRGB(20, 400) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(image.getRGB(30, 2) & 0xFFFFFF).isEqualTo(0xB3001B);
        assertThat(image.getRGB(582, 789) & 0xFFFFFF).isEqualTo(0xB3001B);
    }
}
