package crowdline.console.live;

import crowdline.console.incident.AnnouncementPanel;
import crowdline.console.incident.AnnouncementView;
import crowdline.console.incident.AnnouncementView.Blank;
import crowdline.console.incident.ChoicePanel;
import crowdline.console.live.strip.StripRow;
import crowdline.console.theme.Appearance;
import java.awt.event.KeyEvent;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/**
 * The announcements in Live: which there are, the page of the one that is open, and the field in which its blanks are
 * filled in. The strip stays above them, for the act goes on.
 */
public final class AnnouncementCard extends JPanel {
    private static final double STRIP = 0.07;
    private static final double DESIGNED_WIDTH_PX = 1280;
    private static final double DESIGNED_HEIGHT_PX = 700;

    private final StripRow strip;
    private final ChoicePanel choice;
    private final AnnouncementPanel page;
    private final NoteRow field;
    private final transient Runnable keysBack;
    private final transient Runnable changed;
    /** What is still to be asked for; the first is being asked. */
    private final transient Deque<Blank> asked = new ArrayDeque<>();

    private transient Appearance appearance;
    private transient @Nullable Announcing announcing;
    private transient List<AnnouncementView> all = List.of();
    private transient @Nullable String openId;
    private int from;
    private boolean filling;

    /**
     * @param keysBack gives the keys to the window again, when the field that had them is closed
     * @param changed told when it is opened or closed, or shows something else
     */
    AnnouncementCard(Appearance appearance, Runnable keysBack, Runnable changed) {
        super(null);
        this.appearance = appearance;
        this.keysBack = keysBack;
        this.changed = changed;
        strip = new StripRow(appearance);
        choice = new ChoicePanel(appearance);
        page = new AnnouncementPanel(appearance);
        field = new NoteRow(appearance, this::filled);
        strip.getAccessibleContext().setAccessibleName("Strip over the announcements");
        page.setVisible(false);
        add(field);
        add(strip);
        add(choice);
        add(page);
        wear(appearance);
        getAccessibleContext().setAccessibleName("Announcements");
    }

    /** Opens with the choice. */
    public void open(Announcing of) {
        announcing = of;
        from = 0;
        choose();
        changed.run();
    }

    /** Whether they are in front. */
    public boolean isOpen() {
        return announcing != null;
    }

    /** Goes back to where one was. */
    public void close() {
        if (isOpen()) {
            announcing = null;
            stopFilling();
            changed.run();
        }
    }

    /**
     * Takes a key while they are in front.
     *
     * @param held whether it was down already
     * @return false if it is for the field in which something is filled in
     */
    public boolean press(KeyEvent event, boolean held) {
        if (filling) {
            return event.getKeyCode() == KeyEvent.VK_ESCAPE && stopFilling();
        }
        if (!held && press(event.getKeyCode())) {
            changed.run();
        } else if (!held) {
            close();
        }
        return true;
    }

    private void choose() {
        stopFilling();
        openId = null;
    }

    /** Shows a moment. */
    void refresh(@Nullable LiveView live) {
        Announcing of = announcing;
        if (of == null) {
            return;
        }
        all = of.all();
        from = from < all.size() ? from : 0;
        Optional<AnnouncementView> open = open();
        open.ifPresentOrElse(
                one -> page.show(new AnnouncementPanel.Shown(
                        one, live == null ? List.of() : AnnouncementPresenter.meanwhile(live))),
                () -> choice.show(AnnouncementPresenter.choice(all, from)));
        if (page.isVisible() != open.isPresent()) {
            page.setVisible(open.isPresent());
            choice.setVisible(open.isEmpty());
        }
        if (live != null) {
            strip.show(live.strip());
        }
    }

    private Optional<AnnouncementView> open() {
        return all.stream().filter(one -> one.id().equals(openId)).findFirst();
    }

    /** Whether a blank is being filled in. */
    boolean isFilling() {
        return filling;
    }

    /** Goes on with the field where it was left; false if none is open. */
    boolean takeFocus() {
        if (isOpen() && filling) {
            field.takeFocus();
        }
        return isOpen() && filling;
    }

    /** Leaves the field as it is; false if none is open. */
    boolean stopFilling() {
        boolean open = filling;
        asked.clear();
        filling = false;
        if (open) {
            field.close();
            keysBack.run();
            doLayout();
        }
        return open;
    }

    /** Takes a key that is not for the field; false if it means leaving the pages. */
    boolean press(int key) {
        Optional<AnnouncementView> open = open();
        switch (key) {
            case KeyEvent.VK_ESCAPE -> {
                return false;
            }
            case KeyEvent.VK_B -> choose();
            case KeyEvent.VK_SPACE, KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_RIGHT, KeyEvent.VK_DOWN -> move(1);
            case KeyEvent.VK_BACK_SPACE, KeyEvent.VK_PAGE_UP, KeyEvent.VK_LEFT, KeyEvent.VK_UP -> move(-1);
            case KeyEvent.VK_F -> open.ifPresent(one -> ask(one.blanks()));
            case KeyEvent.VK_ENTER -> {
                if (open.isPresent() && open.get().missing().isEmpty()) {
                    readOut(open.get().id());
                    return false;
                }
                open.ifPresent(one -> ask(one.missing()));
            }
            default -> digit(key);
        }
        return true;
    }

    private void move(int by) {
        if (openId != null) {
            page.move(by);
        } else if (all.size() > ChoicePanel.MOST) {
            int screens = (all.size() + ChoicePanel.MOST - 1) / ChoicePanel.MOST;
            from = Math.floorMod(from / ChoicePanel.MOST + by, screens) * ChoicePanel.MOST;
        }
    }

    private void digit(int key) {
        int digit = key >= KeyEvent.VK_NUMPAD1 && key <= KeyEvent.VK_NUMPAD9
                ? key - KeyEvent.VK_NUMPAD0
                : key - KeyEvent.VK_0;
        Announcing of = announcing;
        int at = from + digit - 1;
        if (openId == null && digit >= 1 && digit <= ChoicePanel.MOST && at < all.size() && of != null) {
            AnnouncementView one = all.get(at);
            openId = one.id();
            of.shown(one.id());
            page.begin();
            ask(one.missing());
        }
    }

    private void readOut(String id) {
        Announcing of = announcing;
        if (of != null) {
            of.readOut(id);
        }
    }

    private void ask(Collection<Blank> blanks) {
        asked.clear();
        asked.addAll(blanks);
        askNext();
    }

    private void askNext() {
        Blank next = asked.peek();
        if (next == null) {
            stopFilling();
            return;
        }
        String more = asked.size() == 1 ? "" : ", then " + (asked.size() - 1) + " more";
        field.open(
                "What to say for \u201c" + next.asks() + "\u201d (Enter keeps it" + more + "; Esc leaves it):",
                next.said());
        filling = true;
        doLayout();
        field.validate();
        field.takeFocus();
        repaint();
    }

    private void filled(String words) {
        Blank blank = asked.peek();
        Announcing of = announcing;
        String id = openId;
        if (blank == null || of == null || id == null) {
            return;
        }
        if (!words.isEmpty()) {
            asked.remove();
            if (!words.equals(blank.said())) {
                of.fill(id, blank.asks(), words);
            }
        }
        // Nothing is no answer: it is asked for again.
        askNext();
    }

    final void wear(Appearance worn) {
        appearance = worn;
        setBackground(worn.palette().ground());
        field.wear(worn);
        doLayout();
    }

    @Override
    public void doLayout() {
        int w = getWidth();
        int h = getHeight();
        int top = (int) Math.round(h * STRIP);
        int bottom = filling ? Math.min(h - top, field.getPreferredSize().height) : 0;
        strip.setBounds(0, 0, w, top);
        choice.setBounds(0, top, w, h - top);
        page.setBounds(0, top, w, h - top - bottom);
        field.setBounds(0, h - bottom, w, bottom);
        strip.room(top);
        double scale = Math.max(0.4, Math.min(w / DESIGNED_WIDTH_PX, h / DESIGNED_HEIGHT_PX));
        strip.wear(appearance, scale);
        choice.wear(appearance, scale);
        page.wear(appearance, scale);
    }
}
