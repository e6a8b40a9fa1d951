package crowdline.console.prepare.list;

import crowdline.console.paint.EveryLetter;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.SlotText;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.edit.act.AddAct;
import crowdline.list.about.AboutAct;
import crowdline.measure.Hour;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What is known of a new act beside its list: what flies it, who, how it is announced, and when. */
final class ActForm extends JPanel {
    private static final String WHICH = "choose a kind";
    private static final String MINUTES = "10";

    private final Fields fields = new Fields();
    private final JComboBox<String> kind = fields.choice("Kind of aircraft", List.of(WHICH));
    private final JTextField performer = fields.line("Who flies");
    private final JTextField aircraft = fields.line("What the aircraft is called; empty, by its kind");
    private final JTextField title = fields.line("How the act is announced");
    private final JTextField slot = fields.line("When it begins, such as 14:30");
    private final JTextField minutes = fields.line("How many minutes; empty, they follow from the list");
    private final transient Supplier<PrepareHost> host;
    /** The slot that was offered, to be offered anew while nobody has typed another. */
    private String offered = "";
    /** The slot behind the acts of the show. */
    private String next = "";
    /** The kind the list said flies it, as long as nobody has chosen another. */
    private String flown = "";
    /** Who the list said flies it, as long as nobody has typed another. */
    private String named = "";
    /** What the list said it is called, as long as nobody has typed another name. */
    private String called = "";
    /** The minutes that were offered, as long as nobody has typed others. */
    private String counted = MINUTES;

    /** @param changed told whenever something was typed or chosen */
    ActForm(Supplier<PrepareHost> host, Runnable changed) {
        this.host = host;
        minutes.setText(MINUTES);
        kind.addActionListener(e -> changed.run());
        slot.getDocument().addDocumentListener(new EveryLetter(changed));
        minutes.getDocument().addDocumentListener(new EveryLetter(changed));
    }

    /** Begins behind the acts of a show; what was typed before stays, until it is cleared. */
    void begin(Show now) {
        if (kind.getItemCount() == 1) {
            host.get().kinds().all().forEach(k -> kind.addItem(k.name()));
        }
        next = AddAct.nextSlot(now).toString();
        begins(next);
    }

    /**
     * Puts what the list says where nobody has typed or chosen anything else. The minutes follow from a list that does not
     * say them.
     *
     * @param flies what the list says that flies
     * @param isListed whether there is a list
     */
    void offer(AboutAct said, Optional<Kind> flies, boolean isListed) {
        if (kind.getSelectedIndex() < 1 || kind.getSelectedItem().equals(flown)) {
            flown = flies.map(Kind::name).orElse("");
            if (flown.isEmpty()) {
                kind.setSelectedIndex(0);
            } else {
                kind.setSelectedItem(flown);
            }
        }
        begins(said.begins() == null ? next : Hour.toTheMinute(said.begins()));
        if (performer.getText().strip().equals(named)) {
            named = Objects.requireNonNullElse(said.pilot(), "");
            performer.setText(named);
        }
        if (aircraft.getText().strip().equals(called)) {
            called = said.calledMoreThan(host.get().kinds()).orElse("");
            aircraft.setText(called);
        }
        if (minutes.getText().strip().equals(counted)) {
            counted = !isListed ? MINUTES : said.minutes() == null ? "" : Numbers.text(said.minutes());
            minutes.setText(counted);
        }
        minutes.putClientProperty("JTextField.placeholderText", isListed ? "from the list" : "");
    }

    private void begins(String at) {
        if (slot.getText().strip().equals(offered) && !at.equals(offered)) {
            offered = at;
            slot.setText(at);
        }
    }

    void clear() {
        title.setText("");
        performer.setText("");
        aircraft.setText("");
        called = "";
        counted = MINUTES;
        minutes.setText(counted);
        kind.setSelectedIndex(0);
        slot.setText("");
        offered = "";
        next = "";
        named = "";
        flown = "";
    }

    boolean isTimed() {
        return kind().filter(k -> !k.flies()).isPresent();
    }

    /** What is missing, in a sentence; empty if nothing is. */
    String missing(boolean isListed) {
        if (kind().isEmpty()) {
            return "Choose the kind of aircraft.";
        }
        if (slot().isEmpty()) {
            return "When does it begin? Hours and minutes, such as 14:30.";
        }
        boolean isLeft = isListed && minutes.getText().isBlank();
        return isLeft || minutes().isPresent()
                ? ""
                : "How many minutes is it? Such as 10" + (isListed ? "; empty, they follow from the list." : ".");
    }

    /** What is wanted; empty while something is missing. */
    Optional<AddAct.Wanted> wanted() {
        return kind().flatMap(k -> slot().map(at ->
                new AddAct.Wanted(k, null, title.getText(), performer.getText(), aircraft.getText(), at)));
    }

    /** Minutes as typed, above 0; empty if that is no such number. */
    Optional<Double> minutes() {
        try {
            return Optional.of(SlotText.minutes(minutes.getText())).filter(m -> m > 0);
        } catch (SlotText.NoSlot e) {
            return Optional.empty();
        }
    }

    private Optional<Kind> kind() {
        return kind.getSelectedIndex() < 1
                ? Optional.empty()
                : host.get().kinds().find(String.valueOf(kind.getSelectedItem()));
    }

    private Optional<LocalTime> slot() {
        try {
            return Optional.of(SlotText.time(slot.getText()));
        } catch (SlotText.NoSlot e) {
            return Optional.empty();
        }
    }

    public void wear(Appearance worn) {
        removeAll();
        fields.wear(worn);
        if (!Roomy.in(worn)) {
            inTwoRows(worn);
            return;
        }
        setLayout(
                new MigLayout(
                        "insets 0, gap " + worn.room(12) + " 0, wrap 6",
                        "[0:0:,grow 24,fill][0:0:,grow 20,fill][0:0:,grow 18,fill][0:0:,grow 18,fill][0:0:,grow 9,fill][0:0:,grow 11,fill]"));
        add(fields.over(kind, "What flies it"), "wmin 0");
        add(fields.over(aircraft, "It is called"), "wmin 0");
        add(fields.over(performer, "Who flies"), "wmin 0");
        add(fields.over(title, "Announced as"), "wmin 0");
        add(fields.over(slot, "Begins"), "wmin 0");
        add(fields.over(minutes, "Minutes"), "wmin 0");
        add(kind, "wmin 0");
        add(aircraft, "wmin 0");
        add(performer, "wmin 0");
        add(title, "wmin 0");
        add(slot, "wmin 0");
        add(minutes, "wmin 0");
    }

    /** Where type is large, or what stands in the narrow fields would be cut. */
    private void inTwoRows(Appearance worn) {
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(12) + " 0, wrap 3",
                "[0:0:,grow 42,fill][0:0:,grow 29,fill][0:0:,grow 29,fill]"));
        add(fields.over(kind, "What flies it"), "wmin 0");
        add(fields.over(aircraft, "It is called"), "wmin 0");
        add(fields.over(performer, "Who flies"), "wmin 0");
        add(kind, "wmin 0");
        add(aircraft, "wmin 0");
        add(performer, "wmin 0");
        add(fields.over(title, "Announced as"), "wmin 0");
        add(fields.over(slot, "Begins"), "wmin 0");
        add(fields.over(minutes, "Minutes"), "wmin 0");
        add(title, "wmin 0");
        add(slot, "wmin 0");
        add(minutes, "wmin 0");
    }
}
