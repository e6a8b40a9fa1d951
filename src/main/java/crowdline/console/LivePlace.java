package crowdline.console;

import crowdline.console.incident.IncidentPanel;
import crowdline.console.incident.IncidentView;
import crowdline.console.incident.ResumeWord;
import crowdline.console.live.LivePanel;
import crowdline.console.live.LiveView;
import crowdline.console.prepare.EmptyShow;
import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import javax.swing.Action;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Live place: the rows, or the incident page in their stead, or how to open a show. */
final class LivePlace extends JPanel {
    private static final String ROWS = "rows";
    private static final String INCIDENT = "incident";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final LivePanel rows;
    private final Later<IncidentPanel.Shown, IncidentPanel> incident;
    private final Later<EmptyShow.Shown, EmptyShow> empty;
    private final transient ResumeWord word = new ResumeWord();
    private transient @Nullable IncidentView page;
    /** None before the first is turned to. */
    private String card = "";

    LivePlace(Appearance appearance, Action open, Action demo) {
        setLayout(cards);
        rows = new LivePanel(appearance);
        incident = new Later<>(
                appearance, IncidentPanel::new, IncidentPanel::show, (page, a) -> page.wear(a, incidentScale()));
        empty = new Later<>(appearance, a -> new EmptyShow(a, open, demo), EmptyShow::show, EmptyShow::wear);
        add(rows, ROWS);
        add(incident, INCIDENT);
        add(empty, EMPTY);
        setBackground(appearance.palette().ground());
        getAccessibleContext().setAccessibleName("Live");
    }

    /** Shows a moment, or how to open a show if there is none. */
    void show(@Nullable LiveView view) {
        if (view == null) {
            page = null;
            turnTo(EMPTY);
            return;
        }
        IncidentView now = view.incident();
        if (now == null) {
            word.clear();
            rows.show(view);
            page = null;
            turnTo(ROWS);
        } else {
            page = now;
            incident.show(new IncidentPanel.Shown(now, word.right()));
            turnTo(INCIDENT);
        }
    }

    /** What is said where a show would be. */
    void showEmpty(EmptyShow.Shown shown) {
        empty.show(shown);
    }

    boolean inIncident() {
        return page != null;
    }

    boolean hasShow() {
        return !card.equals(EMPTY) && !card.isEmpty();
    }

    /**
     * Takes a key on the incident page.
     *
     * @return true if it completed the word that leaves the page
     */
    boolean type(KeyEvent event) {
        if (event.getKeyChar() == KeyEvent.CHAR_UNDEFINED) {
            return false;
        }
        boolean complete = word.type(event.getKeyChar());
        IncidentView now = page;
        if (now != null) {
            incident.show(new IncidentPanel.Shown(now, word.right()));
        }
        return complete;
    }

    void wear(Appearance appearance) {
        setBackground(appearance.palette().ground());
        rows.wear(appearance);
        incident.wear(appearance);
        empty.wear(appearance);
    }

    private double incidentScale() {
        return Math.max(0.5, Math.min(getWidth() / 1280.0, getHeight() / 736.0));
    }

    @Override
    public void doLayout() {
        super.doLayout();
        incident.ifMade(page -> page.rescale(incidentScale()));
    }

    private void turnTo(String next) {
        if (!next.equals(card)) {
            card = next;
            cards.show(this, next);
        }
    }
}
