package crowdline.console.live;

import crowdline.console.incident.IncidentPanel;
import crowdline.console.incident.IncidentView;
import crowdline.console.incident.ResumeWord;
import crowdline.console.place.LazyCard;
import crowdline.console.theme.Appearance;
import java.awt.BorderLayout;
import java.awt.event.KeyEvent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The incident page in Live, and how far the word that leaves it has been typed. */
final class IncidentCard extends JPanel {
    private static final double DESIGNED_WIDTH_PX = 1280;
    private static final double DESIGNED_HEIGHT_PX = 700;

    private final LazyCard<IncidentPanel.Shown, IncidentPanel> panel;
    private final transient ResumeWord word = new ResumeWord();
    private transient @Nullable IncidentView page;

    IncidentCard(Appearance appearance) {
        super(new BorderLayout());
        panel = new LazyCard<>(appearance, IncidentPanel::new, IncidentPanel::show, (page, a) -> page.wear(a, scale()));
        add(panel);
        setOpaque(false);
        super.setVisible(false);
    }

    /** Whether it is in front, or would be but for what lies over it. */
    boolean isOpen() {
        return page != null;
    }

    /** Shows the page; true if it was not shown already, and so begins at its first words. */
    boolean show(IncidentView now) {
        boolean begins = page == null;
        page = now;
        if (begins) {
            word.clear();
        }
        panel.show(new IncidentPanel.Shown(now, word.right()));
        return begins;
    }

    /** Goes to the first words. */
    void begin() {
        panel.ifMade(IncidentPanel::begin);
    }

    void leave() {
        page = null;
    }

    /**
     * Takes a key: one that moves through the words, or a letter of the word that leaves it.
     *
     * @return true if it completed the word
     */
    boolean press(KeyEvent event) {
        switch (event.getKeyCode()) {
            case KeyEvent.VK_SPACE, KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_RIGHT, KeyEvent.VK_DOWN ->
                panel.ifMade(shown -> shown.move(1));
            case KeyEvent.VK_BACK_SPACE, KeyEvent.VK_PAGE_UP, KeyEvent.VK_LEFT, KeyEvent.VK_UP ->
                panel.ifMade(shown -> shown.move(-1));
            default -> {
                return type(event.getKeyChar());
            }
        }
        return false;
    }

    private boolean type(char letter) {
        boolean complete = letter != KeyEvent.CHAR_UNDEFINED && !Character.isISOControl(letter) && word.type(letter);
        IncidentView now = page;
        if (now != null) {
            panel.show(new IncidentPanel.Shown(now, word.right()));
        }
        return complete;
    }

    /** It is made when it is first turned to. */
    @Override
    public void setVisible(boolean visible) {
        panel.setVisible(visible);
        super.setVisible(visible);
    }

    void wear(Appearance appearance) {
        panel.wear(appearance);
    }

    private double scale() {
        return Math.max(0.5, Math.min(getWidth() / DESIGNED_WIDTH_PX, getHeight() / DESIGNED_HEIGHT_PX));
    }

    @Override
    public void doLayout() {
        super.doLayout();
        panel.ifMade(page -> page.rescale(scale()));
    }
}
