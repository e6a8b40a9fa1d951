package crowdline.console.glossary;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.glossary.GlossaryView.Section;
import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.path.SidePainter;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.sight.SideView;
import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One entry of the glossary, its texts large, under each other. */
final class EntryPage extends JScrollPane {
    private final Sheet sheet = new Sheet();
    private transient @Nullable EntryView entry;
    private transient Appearance appearance;

    EntryPage(Appearance appearance) {
        this.appearance = appearance;
        setViewportView(sheet);
        setBorder(null);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        getAccessibleContext().setAccessibleName("The figure explained");
    }

    void show(EntryView next) {
        if (!next.equals(entry)) {
            entry = next;
            fill();
        }
    }

    void wear(Appearance worn) {
        appearance = worn;
        fill();
    }

    private void fill() {
        sheet.removeAll();
        sheet.setBackground(appearance.palette().stage());
        getViewport().setBackground(appearance.palette().stage());
        EntryView shown = entry;
        if (shown != null) {
            String inset = appearance.room(24);
            boolean drawn = !shown.drawing().isEmpty();
            sheet.setLayout(new MigLayout(
                    "insets " + inset + ", fillx, gap " + appearance.room(24) + " " + appearance.room(4),
                    drawn ? "[0:0:,grow 60,fill][0:0:,grow 40,fill]" : "[0:0:,grow,fill]"));
            sheet.add(
                    text(
                            "Figure",
                            shown.name(),
                            appearance.strong(TextRole.NEXT),
                            appearance.palette().text()),
                    drawn ? "wmin 0" : "wmin 0, wrap");
            if (drawn) {
                Drawing drawing = new Drawing(appearance);
                drawing.show(shown.drawing());
                sheet.add(drawing, "spany 3, grow, wrap, wmin 0, h " + appearance.room(200) + "!");
            }
            if (!shown.others().isBlank()) {
                sheet.add(
                        text(
                                "Also called",
                                "also: " + shown.others(),
                                appearance.plain(TextRole.SMALL),
                                appearance.palette().soft()),
                        "wmin 0, wrap");
            }
            sheet.add(
                    text(
                            "Look for",
                            shown.lookFor(),
                            appearance.strong(TextRole.READ),
                            appearance.palette().text()),
                    "wmin 0, aligny top, wrap " + appearance.room(14));
            for (Section section : shown.sections()) {
                JLabel title = PlainText.plain(new JLabel(section.title()));
                title.setFont(appearance.strong(TextRole.SMALL));
                title.setForeground(appearance.palette().accent());
                sheet.add(title, "spanx, wrap");
                sheet.add(
                        text(
                                section.title(),
                                section.text(),
                                appearance.plain(TextRole.VALUE),
                                appearance.palette().text()),
                        "spanx, growx, wmin 0, wrap " + appearance.room(16));
            }
        }
        sheet.revalidate();
        sheet.repaint();
        getViewport().setViewPosition(new java.awt.Point(0, 0));
    }

    private static JTextArea text(String name, String words, Font font, Color colour) {
        JTextArea area = PlainText.wrapped(name, words);
        area.setFont(font);
        area.setForeground(colour);
        return area;
    }

    /** As wide as its window, so that text wraps instead of running out. */
    private static final class Sheet extends JPanel implements Scrollable {
        @Override
        public java.awt.Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Math.max(16, visible.height / 12);
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return orientation == SwingConstants.VERTICAL ? visible.height * 9 / 10 : visible.width;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return false;
        }
    }

    /** The figure seen from the crowd. */
    private static final class Drawing extends Painted<SideView> {
        Drawing(Appearance appearance) {
            super("Seen from the crowd", appearance);
            wear(appearance, appearance.zoom().factor());
        }

        @Override
        protected Color ground(Appearance worn) {
            return worn.palette().stage();
        }

        @Override
        protected String spoken(SideView shown) {
            return "A drawing of the figure as the crowd sees it";
        }

        @Override
        protected void paint(Pen pen, SideView shown, Box box) {
            SidePainter.paint(pen, shown, box);
        }
    }
}
