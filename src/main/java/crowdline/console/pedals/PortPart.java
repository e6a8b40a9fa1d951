package crowdline.console.pedals;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.console.window.TextMenu;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonStatus;
import crowdline.telemetry.serial.PortName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Where the pedal is plugged in: the ports there are, or the name of one, and how it stands. */
final class PortPart extends JPanel {
    private static final String NO_PORT =
            "No serial port was found. Plug the pedal in; it appears here by itself. A remote that types keys needs none.";
    /** Speeds of boards that send a byte a press; common practice, no source. */
    private static final List<Integer> SPEEDS_BAUD = List.of(1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200);

    private static final PortName NONE = new PortName("", "None: a remote that types keys needs no port");

    private final DefaultListModel<PortName> names = new DefaultListModel<>();
    private final JList<PortName> ports = new JList<>(names);
    private final JTextField typed = TextMenu.on(new JTextField());
    private final JComboBox<Speed> speed;
    private final SaidLine status;
    private final transient Consumer<@Nullable String> use;
    private @Nullable String current;

    /**
     * @param learned where it is plugged in now
     * @param use told which port to listen to, by its path; null for none
     * @param useBaud told at which speed
     */
    PortPart(Appearance appearance, LearnedButtons learned, Consumer<@Nullable String> use, IntConsumer useBaud) {
        this.use = use;
        current = learned.port();
        speed = speed(appearance, learned.baud(), useBaud);
        status = new SaidLine("State of the pedal", appearance, TextRole.BODY, 40);
        ports.setCellRenderer(new PortCells());
        ports.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        ports.setVisibleRowCount(3);
        ports.setFont(appearance.plain(TextRole.BODY));
        ports.getAccessibleContext().setAccessibleName("Where the pedal is plugged in");
        ports.getAccessibleContext().setAccessibleDescription("Enter listens to the chosen port");
        ports.registerKeyboardAction(e -> choose(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        typed.setFont(appearance.plain(TextRole.BODY));
        typed.getAccessibleContext().setAccessibleName("Or the name of its port");
        typed.addActionListener(e -> type());
        setLayout(new MigLayout(
                "insets 0, gap " + appearance.room(8) + " " + appearance.room(4),
                "[0:0:,grow 60,fill][0:0:,grow 40,fill]"));
        add(label(appearance, "Where the pedal is plugged in (Enter chooses)", ports));
        add(label(appearance, "Or the name of its port", typed), "wrap");
        add(new JScrollPane(ports), "spany 3, hmin " + appearance.room(84) + ", grow");
        JButton useTyped = new JButton("Use");
        useTyped.setFont(appearance.plain(TextRole.BODY));
        useTyped.addActionListener(e -> type());
        add(typed, "split 2, growx, wmin 0");
        add(useTyped, "growx 0, wrap");
        add(label(appearance, "Its speed", speed), "split 2, growx 0");
        add(speed, "growx, wmin 0, wrap");
        add(status, "growx");
        show(List.of());
    }

    private static JComboBox<Speed> speed(Appearance appearance, int now, IntConsumer use) {
        List<Integer> all = new ArrayList<>(SPEEDS_BAUD);
        if (!all.contains(now)) {
            all.add(now);
            Collections.sort(all);
        }
        JComboBox<Speed> box = new JComboBox<>(all.stream().map(Speed::new).toArray(Speed[]::new));
        box.setSelectedItem(new Speed(now));
        box.setFont(appearance.plain(TextRole.BODY));
        box.getAccessibleContext().setAccessibleName("Its speed");
        box.getAccessibleContext().setAccessibleDescription("As the pedal's maker says; a plain switch has none");
        box.addActionListener(e -> {
            if (box.getSelectedItem() instanceof Speed chosen) {
                use.accept(chosen.baud());
            }
        });
        return box;
    }

    /** A speed, in words. */
    record Speed(int baud) {
        @Override
        public String toString() {
            String words = String.format(Locale.UK, "%,d baud", baud);
            return baud == LearnedButtons.USUAL_BAUD ? words + ", the usual" : words;
        }
    }

    /** Shows the ports there are; nothing moves when they are the same as before. */
    void show(PedalHost.Found found, ButtonStatus stands) {
        show(found.ports());
        status.show(mark(found, stands, current));
    }

    /** How the port stands, or why there is none. */
    static Mark mark(PedalHost.Found found, ButtonStatus stands, @Nullable String current) {
        if (current != null) {
            return switch (stands.state()) {
                case READY -> new Mark(Form.DISC, Tone.GOOD, "Connected: pedals at " + current);
                case SENDING -> new Mark(Form.DIAMOND, Tone.CAUTION, stands.text());
                case LOOKING ->
                    new Mark(
                            Form.RING,
                            Tone.CALM,
                            stands.text().isEmpty() ? "Not connected: " + current : current + ": " + stands.text());
                case GONE ->
                    new Mark(
                            Form.DIAMOND,
                            Tone.CAUTION,
                            stands.text().isEmpty() ? "Not connected: " + current : "Not connected: " + stands.text());
            };
        }
        String wrong = found.wrong();
        return wrong != null
                ? new Mark(Form.STOP, Tone.ALARM, wrong)
                : new Mark(
                        Form.RING,
                        Tone.CALM,
                        found.ports().isEmpty() ? NO_PORT : "No port chosen; a remote that types keys needs none");
    }

    private void show(List<PortName> found) {
        List<PortName> all = new ArrayList<>();
        all.add(NONE);
        all.addAll(found);
        String now = current;
        if (now != null && found.stream().noneMatch(p -> p.path().equals(now))) {
            all.add(new PortName(now, now));
        }
        if (!all.equals(Collections.list(names.elements()))) {
            names.clear();
            all.forEach(names::addElement);
            mark();
        }
    }

    private void mark() {
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).path().equals(current == null ? "" : current)) {
                ports.setSelectedIndex(i);
            }
        }
    }

    private void choose() {
        PortName port = ports.getSelectedValue();
        if (port != null) {
            to(port.path().isEmpty() ? null : port.path());
        }
    }

    private void type() {
        String name = typed.getText().strip();
        if (!name.isEmpty()) {
            to(name);
            typed.setText("");
        }
    }

    private void to(@Nullable String path) {
        current = path;
        use.accept(path);
        List<PortName> known = new ArrayList<>(Collections.list(names.elements()));
        known.remove(NONE);
        show(known);
        mark();
    }

    private static JLabel label(Appearance appearance, String words, java.awt.Component of) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        label.setFont(appearance.strong(TextRole.BODY));
        return label;
    }

    /** Names of devices are text, never markup. */
    private static final class PortCells extends javax.swing.DefaultListCellRenderer {
        @Override
        public java.awt.Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            PlainText.plain(this);
            return super.getListCellRendererComponent(
                    list, value instanceof PortName port ? port.words() : value, index, selected, focused);
        }
    }
}
