package crowdline.console.prepare.announce;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.glance.FileKeys;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.edit.day.Announcements;
import crowdline.show.Incident;
import crowdline.show.Show;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The organiser's words for when something goes wrong, and who agreed them and when. */
final class IncidentCard extends JPanel implements PrepareCard {
    /** Over the box for words of the organiser's. */
    static final String WORDS = "What to say";

    private static final String NONE =
            "There is no incident page yet. Begin with the template, put your own words in, and agree them with the"
                    + " display director before the day.";
    private static final String HOW =
            "F12 shows these words, large, in every place; an empty line separates the paragraphs. Give each thing"
                    + " to do, and each person to reach, a line of its own. When the words change, they have to be"
                    + " agreed again.";

    private final ShowForm form;
    private final JTextField agreed;
    private final JTextArea words;
    private final JTextArea steps;
    private final JTextArea contacts;
    private final JTextArea none = PlainText.wrapped("What to do first", NONE);
    private final JTextArea how = PlainText.wrapped("About these words", HOW);
    private final JButton begin;
    private final MarkLine mark;
    private final JPanel page = new JPanel();

    IncidentCard(Appearance appearance, Tools tools) {
        form = new ShowForm(tools);
        agreed = form.line(
                "Agreed with whom, and when",
                of(i -> i.agreedWith() == null ? "" : i.agreedWith()),
                Announcements::agreed);
        words = form.area("What to say", 8, of(i -> String.join("\n\n", i.words())), Announcements::words);
        steps = form.area("What to do first", 5, of(i -> String.join("\n", i.firstSteps())), Announcements::firstSteps);
        contacts = form.area(
                "Whom to reach",
                5,
                of(i -> i.contacts().stream()
                        .map(c -> c.role() + ": " + c.how())
                        .collect(Collectors.joining("\n"))),
                Announcements::contacts);
        begin = form.fields().button("Begin with the template");
        begin.addActionListener(e -> {
            if (tools.editor().isOpen()) {
                tools.editor()
                        .make(Announcements.template(
                                tools.host().get().incidentTemplate().incident()));
            }
        });
        mark = new MarkLine("Whether it is agreed", appearance);
        getAccessibleContext().setAccessibleName("Incident page");
    }

    private static Function<Show, String> of(Function<Incident, String> what) {
        return show -> {
            Incident incident = show.incident();
            return incident == null ? "" : what.apply(incident).strip();
        };
    }

    @Override
    public void edited(Show show) {
        form.show(show);
        Incident incident = show.incident();
        boolean isAgreed = incident != null && incident.agreedWith() != null;
        mark.show(
                isAgreed
                        ? new Mark(Form.DISC, Tone.GOOD, "agreed")
                        : new Mark(Form.DIAMOND, Tone.CAUTION, "agreed with nobody yet"));
        none.setVisible(incident == null);
        begin.setVisible(incident == null);
        page.setVisible(incident != null);
    }

    @Override
    public boolean takeFocus() {
        JComponent first = page.isVisible() ? words : begin;
        return first.requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        mark.dress(worn);
        none.setFont(worn.plain(TextRole.SMALL));
        how.setFont(worn.plain(TextRole.BODY));
        how.setForeground(worn.palette().soft());
        how.setFocusable(false);
        setLayout(new MigLayout(
                "insets 0, gap 0 " + worn.room(10) + ", hidemode 3", "[0:0:,grow,fill]", "[][][0:0:,grow,fill][]"));
        page.removeAll();
        page.setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(4),
                "[0:0:,grow 60,fill][0:0:,grow 40,fill]",
                "[][0:0:,grow 55,fill][][0:0:,grow 45,fill][][]"));
        page.add(form.over(words, WORDS), "wmin 0");
        page.add(form.over(steps, FileKeys.label("firstSteps")), "wmin 0, wrap");
        page.add(Scrolling.down(words), "grow, wmin 0, hmin 0, spany 3");
        page.add(Scrolling.down(steps), "grow, wmin 0, hmin 0, wrap");
        page.add(form.over(contacts, "Who: how to reach"), "wmin 0, wrap");
        page.add(Scrolling.down(contacts), "grow, wmin 0, hmin 0, wrap");
        page.add(form.over(agreed, "Agreed with whom, and when"), "wmin 0, wrap");
        page.add(agreed, "wmin 0");
        page.add(mark, "wmin 0, h " + worn.room(24) + "!");
        form.wear(worn);
        add(none, "cell 0 0, wmin 0");
        add(begin, "cell 0 1, growx 0");
        add(page, "cell 0 2, grow, wmin 0, hmin 0");
        add(how, "cell 0 3, wmin 0");
        revalidate();
        repaint();
    }
}
