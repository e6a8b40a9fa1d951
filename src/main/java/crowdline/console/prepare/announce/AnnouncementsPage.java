package crowdline.console.prepare.announce;

import crowdline.console.keys.Command;
import crowdline.console.keys.KeyOn;
import crowdline.console.prepare.field.Choices;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.window.ContextMenu;
import crowdline.edit.day.Occasions;
import crowdline.show.Announcement;
import crowdline.show.Incident;
import crowdline.show.Show;
import java.awt.CardLayout;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The organiser's words for what nobody can plan: the incident page, and one announcement for each other occasion. */
public final class AnnouncementsPage extends JPanel implements PrepareCard {
    /** Of the incident page; an announcement's own id is never blank. */
    private static final String INCIDENT = "";

    private final Choices<Occasion> occasions = new Choices<>("Occasions", Occasion::id, Occasion::words, this::chosen);
    private final IncidentCard incident;
    private final AnnouncementCard announcement;
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private final Fields buttons = new Fields();
    private final JButton begin = buttons.button("Add other occasions");
    private final transient Tools tools;

    /** A line of the list. */
    private record Occasion(String id, String words) {}

    public AnnouncementsPage(Appearance appearance, Tools tools) {
        this.tools = tools;
        incident = new IncidentCard(appearance, tools);
        announcement = new AnnouncementCard(appearance, tools, this::id);
        stage.add(incident, "INCIDENT");
        stage.add(announcement, "ANNOUNCEMENT");
        begin.setToolTipText(
                "From the template: weather stop, lost child, evacuation and others; agreed with nobody yet");
        begin.setMnemonic('O');
        begin.addActionListener(e -> begin());
        ContextMenu.on(occasions.list(), tools.actions(), List.of(Command.ADD, Command.REMOVE));
        KeyOn.all(occasions.list(), Map.of("ENTER", () -> card().takeFocus(), "RIGHT", () -> card().takeFocus()));
        getAccessibleContext().setAccessibleName("Announcements");
    }

    private String id() {
        return occasions.chosen().map(Occasion::id).orElse(INCIDENT);
    }

    private PrepareCard card() {
        return id().equals(INCIDENT) ? incident : announcement;
    }

    private void begin() {
        if (tools.editor().isOpen()) {
            occasions.list().requestFocusInWindow();
            tools.editor()
                    .make(Occasions.template(
                            tools.host().get().incidentTemplate().announcements()));
        }
    }

    private void chosen() {
        if (tools.editor().isOpen()) {
            announcement.settle();
            fill(tools.editor().now());
        }
    }

    @Override
    public void edited(Show show) {
        List<Occasion> all = new ArrayList<>();
        Incident page = show.incident();
        all.add(new Occasion(INCIDENT, line("Incident page", page != null && page.agreedWith() != null)));
        for (Announcement one : show.announcements()) {
            all.add(new Occasion(one.id(), line(one.occasion(), one.isAgreed())));
        }
        occasions.show(all);
        begin.setVisible(show.announcements().isEmpty());
        fill(show);
    }

    /** Agreed or not, by a shape and a word. */
    private static String line(String occasion, boolean isAgreed) {
        return (isAgreed ? "● " : "◆ ") + occasion + (isAgreed ? ", agreed" : ", not agreed");
    }

    private void fill(Show show) {
        cards.show(stage, id().equals(INCIDENT) ? "INCIDENT" : "ANNOUNCEMENT");
        card().edited(show);
    }

    /** Adds an occasion, to be named. */
    public void add() {
        tools.editor().make(Occasions.add("New occasion"), show -> {
            List<Announcement> all = show.announcements();
            occasions.chooseNext(all.get(all.size() - 1).id());
            edited(show);
            announcement.name();
        });
    }

    public void remove() {
        if (id().equals(INCIDENT)) {
            tools.editor().refuse("The incident page stays; only other announcements can be taken out");
        } else {
            tools.editor().make(Occasions.remove(id()));
        }
    }

    /** From the words back to the occasions; false if the focus is there already. */
    public boolean back() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null
                && SwingUtilities.isDescendingFrom(owner, stage)
                && occasions.list().requestFocusInWindow();
    }

    @Override
    public boolean takeFocus() {
        return occasions.list().requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        occasions.wear(worn);
        buttons.wear(worn);
        incident.wear(worn);
        announcement.wear(worn);
        JPanel left = new JPanel(new MigLayout(
                "insets 0, gap 0 " + worn.room(10) + ", hidemode 3, wrap 1", "[0:0:,grow,fill]", "[0:0:,grow,fill][]"));
        left.add(Scrolling.down(occasions.list()), "grow, wmin 0, hmin 0");
        left.add(begin, "wmin 0");
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " 0",
                (Roomy.in(worn) ? "[28%!]" : "[37%!]") + "[0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        add(left, "grow, wmin 0, hmin 0");
        add(stage, "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }
}
