package crowdline.console.prepare.aircraft;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Choices;
import crowdline.console.prepare.field.Labelled;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.glance.NumberWords;
import crowdline.console.prepare.page.PrepareCard;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.day.Aircrafts;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** What flies: its kind, which way it differs from that, and, behind a fold, its numbers. */
public final class AircraftPage extends JPanel implements PrepareCard {
    private static final String NONE = "No aircraft yet. Each act brings its own: add one with Ctrl+I.";
    private static final String OWN = "own numbers";

    private final ShowForm form;
    private final Choices<Aircraft> aircraft = new Choices<>("Aircraft", Aircraft::id, Aircraft::name, this::chosen);
    private final JTextField name;
    private final JComboBox<String> kind;
    private final JTextField number;
    private final JTextArea what = PlainText.wrapped("What it is", "");
    private final JTextArea none = PlainText.wrapped("What to do first", NONE);
    private final SliderRow sliders;
    private final JButton fold;
    private final NumberTable numbers;
    private final JPanel page = new JPanel();
    private final transient Tools tools;
    /** The id of the aircraft in the fields. */
    private String shown = "";

    private boolean isOpen;
    private transient Appearance worn;

    public AircraftPage(Appearance appearance, Tools tools) {
        this.tools = tools;
        worn = appearance;
        form = new ShowForm(tools);
        name = form.line("What it is called", of(Aircraft::name), typed -> Aircrafts.rename(id(), typed));
        kind = form.choice("Kind", List.of(OWN), of(AircraftPage::kindOf), this::kind);
        number = form.line("How many they are", of(AircraftPage::numberOf), this::number);
        sliders = new SliderRow(this::slide);
        numbers = new NumberTable(this::tell);
        fold = form.fields().button("");
        fold.addActionListener(e -> {
            isOpen = !isOpen;
            wear(worn);
        });
        getAccessibleContext().setAccessibleName("Aircraft");
    }

    private Function<Show, String> of(Function<Aircraft, String> what) {
        return show -> show.aircraft(id()).map(what).orElse("");
    }

    private static String kindOf(Aircraft aircraft) {
        if (aircraft instanceof TimedAircraft timed) {
            return timed.kind().name();
        }
        Typical typical = ((Airframe) aircraft).typical();
        return typical == null ? OWN : typical.kind().name();
    }

    private static String numberOf(Aircraft aircraft) {
        return aircraft instanceof TimedAircraft timed && timed.number() != null ? String.valueOf(timed.number()) : "";
    }

    private Edit kind(String typed) throws CannotBe {
        Optional<Kind> found = tools.host().get().kinds().find(typed);
        if (found.isEmpty()) {
            throw new CannotBe("Choose its kind; what is known of its own numbers goes below");
        }
        return tools.host().get().aircrafts().kind(id(), found.get());
    }

    private Edit number(String typed) throws CannotBe {
        Double count = Numbers.read("How many they are", typed);
        if (count != null && count != Math.rint(count)) {
            throw new CannotBe("They are a whole number, such as 4");
        }
        return tools.host().get().aircrafts().number(id(), count == null ? null : Integer.valueOf(count.intValue()));
    }

    private void slide(Sliders to) {
        make(tools.host().get().aircrafts().sliders(id(), to));
    }

    private void tell(String key, String typed) {
        try {
            make(tools.host().get().aircrafts().number(id(), key, Numbers.read(NumberWords.of(key), typed)));
        } catch (CannotBe e) {
            tools.editor().refuse(e.why());
        }
    }

    private void make(Edit edit) {
        if (tools.editor().isOpen()) {
            tools.editor().make(edit, show -> {}, () -> fill(tools.editor().now()));
        }
    }

    private String id() {
        return shown;
    }

    /** A click chooses another before the field that was typed in knows that it was left. */
    private void chosen() {
        if (tools.editor().isOpen()) {
            form.settle();
            if (numbers.isEditing()) {
                numbers.getCellEditor().stopCellEditing();
            }
            fill(tools.editor().now());
        }
    }

    @Override
    public void edited(Show show) {
        if (kind.getItemCount() == 1) {
            tools.host().get().kinds().all().forEach(k -> kind.addItem(k.name()));
        }
        aircraft.show(show.airframes());
        fill(show);
    }

    private void fill(Show show) {
        shown = aircraft.chosen().map(Aircraft::id).orElse("");
        form.show(show, shown);
        Aircraft chosen = show.aircraft(id()).orElse(null);
        page.setVisible(chosen != null);
        none.setVisible(chosen == null);
        Typical typical = chosen instanceof Airframe a ? a.typical() : null;
        sliders.setVisible(typical != null);
        if (typical != null) {
            sliders.show(typical.sliders(), chosen instanceof Airframe a && !a.glider());
        }
        number.setEnabled(chosen instanceof TimedAircraft);
        what.setText(chosen == null ? "" : sentence(chosen));
        numbers.show(chosen instanceof Airframe a ? a : null);
        fold.setVisible(chosen instanceof Airframe);
        fold.setText((isOpen ? "Hide" : "Show") + " the numbers");
    }

    private static String sentence(Aircraft aircraft) {
        List<String> said = new ArrayList<>();
        if (aircraft instanceof TimedAircraft timed) {
            said.add(timed.kind().sentence());
        } else if (aircraft instanceof Airframe airframe) {
            Typical typical = airframe.typical();
            said.add(
                    typical == null
                            ? "All its numbers were given."
                            : typical.kind().sentence());
            int assumed = airframe.assumed().size();
            if (assumed > 0) {
                said.add(assumed + (assumed == 1 ? " number is" : " numbers are")
                        + " typical of the kind, and assumed.");
            }
        }
        return String.join(" ", said);
    }

    @Override
    public boolean takeFocus() {
        return aircraft.list().requestFocusInWindow();
    }

    @Override
    public void wear(Appearance next) {
        worn = next;
        removeAll();
        form.wear(next);
        aircraft.wear(next);
        sliders.wear(next);
        numbers.wear(next);
        what.setFont(next.plain(TextRole.BODY));
        what.setForeground(next.palette().soft());
        what.setFocusable(false);
        none.setFont(next.plain(TextRole.SMALL));
        page.removeAll();
        page.setLayout(new MigLayout(
                "insets 0, gap " + next.room(14) + " " + next.room(10) + ", hidemode 3",
                "[0:0:,grow 43,fill][0:0:,grow 39,fill][0:0:,grow 18,fill]",
                "[][][][][0:0:,grow,fill]"));
        Labelled.add(
                page,
                form.fields(),
                next,
                new String[] {"Called", "Kind", "How many"},
                new javax.swing.JComponent[] {name, kind, number},
                3);
        page.add(what, "spanx, wmin 0, wrap");
        page.add(sliders, "spanx, wmin 0, wrap");
        page.add(fold, "spanx, growx 0, wrap");
        if (isOpen) {
            page.add(Scrolling.down(numbers), "spanx, grow, wmin 0, hmin 0");
        }
        setLayout(new MigLayout(
                "insets 0, gap " + next.room(16) + " 0, hidemode 3", "[25%!][0:0:,grow,fill]", "[0:0:,grow,fill]"));
        add(Scrolling.down(aircraft.list()), "grow, wmin 0, hmin 0");
        add(none, "wmin 0, aligny top");
        add(page, "grow, wmin 0, hmin 0");
        if (tools.editor().isOpen()) {
            fill(tools.editor().now());
        }
        revalidate();
        repaint();
    }
}
