package crowdline.console.prepare.people;

import crowdline.console.keys.Command;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Choices;
import crowdline.console.prepare.field.Labelled;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.field.Tall;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.ContextMenu;
import crowdline.edit.act.Edit;
import crowdline.edit.day.People;
import crowdline.show.Interpreting;
import crowdline.show.Performer;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.Speaker;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * Who flies: their names, how these are said, and what is known of each with who vouches for it; how words are said; and who
 * speaks.
 */
public final class PeoplePage extends JPanel implements PrepareCard {
    private static final String NOBODY =
            "Nobody yet. Whoever flies an act appears here by name. " + Command.ADD.key() + " adds somebody.";

    private static final String SPEAKERS =
            "Whoever is at the console comes first; write \u201caway\u201d for anyone who is not there today.";

    /** Of a table and its heads. */
    private static final int LEAST_PX = 112;

    private static final String HERE = "here";
    private static final String AWAY = "away";

    private final ShowForm form;
    private final Choices<Performer> people = new Choices<>("People", Performer::id, Performer::name, this::chosen);
    private final JTextField name;
    private final JTextField sayAs;
    private final PairTable facts;
    private final PairTable words;
    private final PairTable speakers;
    private final JTextArea factsTitle =
            PlainText.wrapped("Heading", "What is known about them and what they fly, each with its source");
    private final JTextArea wordsTitle = PlainText.wrapped("Heading", "How names and words are said, in every act");
    private final JTextArea speakersTitle = PlainText.wrapped("Heading", "Who speaks");
    private final JTextArea speakersHow = PlainText.wrapped("How it is meant", SPEAKERS);
    private final JCheckBox beside = new JCheckBox("Both languages at once");
    private final JTextArea nobody = PlainText.wrapped("What to do first", NOBODY);
    private final JPanel person = new JPanel();
    private final transient Tools tools;
    /** The id of whoever is in the fields. */
    private String shown = "";

    public PeoplePage(Tools tools) {
        this.tools = tools;
        form = new ShowForm(tools);
        name = form.line("Name", of(Performer::name), typed -> People.rename(id(), typed));
        sayAs = form.line(
                "How to say the name", of(p -> p.sayAs() == null ? "" : p.sayAs()), typed -> People.sayAs(id(), typed));
        facts = new PairTable(
                "Facts with their sources",
                "Fact",
                "Who vouches for it",
                "",
                pairs -> make(People.facts(
                        id(),
                        pairs.stream()
                                .map(p -> new SourcedFact(p.left(), p.right()))
                                .toList())));
        words = new PairTable("How words are said", "As written", "As said", "", pairs -> {
            Map<String, String> said = new LinkedHashMap<>();
            pairs.forEach(p -> said.put(p.left(), p.right()));
            make(People.words(said));
        });
        speakers = new PairTable(
                "Who speaks",
                "Name",
                "Today",
                HERE,
                pairs -> make(People.speakers(pairs.stream()
                        .map(p -> new Speaker(p.left(), p.right().equalsIgnoreCase(AWAY)))
                        .toList())));
        beside.addActionListener(
                e -> make(People.interpreting(beside.isSelected() ? Interpreting.BESIDE : Interpreting.AFTER)));
        beside.setToolTipText(
                "For an interpreter with loudspeakers or earphones of their own; otherwise one after the other");
        ContextMenu.on(people.list(), tools.actions(), List.of(Command.ADD, Command.REMOVE));
        getAccessibleContext().setAccessibleName("People");
    }

    private Function<Show, String> of(Function<Performer, @Nullable String> what) {
        return show -> show.performer(id()).map(what).orElse("");
    }

    private String id() {
        return shown;
    }

    private void make(Edit edit) {
        if (tools.editor().isOpen()) {
            tools.editor().make(edit, show -> {}, () -> {
                facts.refused();
                words.refused();
                speakers.refused();
                edited(tools.editor().now());
            });
        }
    }

    /** A click chooses somebody else before the field that was typed in knows that it was left. */
    private void chosen() {
        if (tools.editor().isOpen()) {
            form.settle();
            if (facts.isEditing()) {
                facts.getCellEditor().stopCellEditing();
            }
            fill(tools.editor().now());
        }
    }

    @Override
    public void edited(Show show) {
        people.show(show.performers());
        fill(show);
    }

    private void fill(Show show) {
        shown = people.chosen().map(Performer::id).orElse("");
        form.show(show, shown);
        Optional<Performer> chosen = show.performer(id());
        facts.show(
                chosen.map(Performer::facts).orElse(List.of()).stream()
                        .map(f -> new PairTable.Pair(f.text(), f.source()))
                        .toList(),
                shown);
        words.show(
                new TreeMap<>(show.sayAs())
                        .entrySet().stream()
                                .map(e -> new PairTable.Pair(e.getKey(), e.getValue()))
                                .toList(),
                "");
        speakers.show(
                show.speakers().all().stream()
                        .map(s -> new PairTable.Pair(s.name(), s.away() ? AWAY : HERE))
                        .toList(),
                "");
        String untimed = show.speakers().all().stream()
                .filter(s -> !s.away()
                        && !tools.host().get().noteOn(s, show.speakers()).isEmpty())
                .map(Speaker::name)
                .collect(Collectors.joining(", "));
        speakersHow.setText(untimed.isEmpty() ? SPEAKERS : SPEAKERS + " Never timed, so at the usual pace: " + untimed);
        beside.setSelected(show.speakers().interpreting() == Interpreting.BESIDE);
        nobody.setVisible(show.performers().isEmpty());
        person.setVisible(!show.performers().isEmpty());
    }

    /** Adds somebody, to be called by their name. */
    public void add() {
        int number = tools.editor().now().performers().size() + 1;
        tools.editor().make(People.add("New name " + number), show -> {
            people.chooseNext(
                    show.performers().get(show.performers().size() - 1).id());
            edited(show);
            TypedText.begin(name);
        });
    }

    public void remove() {
        people.chosen().ifPresent(p -> tools.editor().make(People.remove(p.id())));
    }

    @Override
    public boolean takeFocus() {
        return people.list().requestFocusInWindow();
    }

    @Override
    public void wear(Appearance worn) {
        removeAll();
        form.wear(worn);
        people.wear(worn);
        facts.wear(worn);
        words.wear(worn);
        speakers.wear(worn);
        for (JTextArea heading : new JTextArea[] {factsTitle, wordsTitle, speakersTitle}) {
            heading.setFont(worn.strong(TextRole.BODY));
            heading.setFocusable(false);
        }
        nobody.setFont(worn.plain(TextRole.SMALL));
        speakersHow.setFont(worn.plain(TextRole.LABEL));
        speakersHow.setForeground(worn.palette().soft());
        speakersHow.setFocusable(false);
        // Three rows at least; where there is no room for them the page scrolls.
        String rows = "[" + worn.room(LEAST_PX) + ":" + worn.room(LEAST_PX) + ":,grow,fill]";
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(16) + " " + worn.room(10) + ", hidemode 3",
                "[25%!][0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        person.removeAll();
        person.setLayout(new MigLayout(
                "insets 0, gap " + worn.room(14) + " " + worn.room(6),
                "[0:0:,grow,fill][0:0:,grow,fill]",
                "[][]" + rows));
        Labelled.add(
                person, form.fields(), worn, new String[] {"Name", "How to say it"}, new JTextField[] {name, sayAs}, 2);
        person.add(factsTitle, "spanx, wmin 0, wrap");
        person.add(Scrolling.down(facts), "spanx, grow, wmin 0, hmin 0");
        JPanel said = new JPanel(new MigLayout(
                "insets 0, gap " + worn.room(14) + " " + worn.room(6),
                "[0:0:,grow,fill][0:0:,grow,fill]",
                "[bottom][grow,fill]"));
        said.add(wordsTitle, "wmin 0");
        said.add(speakersTitle, "wmin 0, wrap");
        said.add(Scrolling.down(words), "grow, wmin 0, h 0:0:");
        beside.setFont(worn.plain(TextRole.BODY));
        JPanel voices = new JPanel(
                new MigLayout("insets 0, gap 0 " + worn.room(6) + ", wrap 1", "[0:0:,grow,fill]", rows + "[][]"));
        voices.add(Scrolling.down(speakers), "grow, wmin 0, hmin 0");
        voices.add(speakersHow, "wmin 0");
        voices.add(beside, "wmin 0");
        said.add(voices, "grow, wmin 0");
        add(Scrolling.down(people.list()), "grow, wmin 0, hmin 0");
        Tall page = new Tall(
                new MigLayout("insets 0, gap 0 0, hidemode 3", "[0:0:,grow,fill]", "[][grow 60,fill][grow 40,fill]"));
        page.add(nobody, "cell 0 0, wmin 0");
        page.add(person, "cell 0 1, grow, wmin 0");
        page.add(said, "cell 0 2, grow, wmin 0, gaptop " + worn.room(10));
        JScrollPane scroll = Scrolling.down(page);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }
}
