package crowdline.console;

import crowdline.console.theme.Appearance;
import java.awt.BorderLayout;
import java.awt.Frame;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;

/** Asks where the aircraft's position comes from: Enter chooses, Escape leaves it as it is. */
final class ReceiverDialog {
    private static final ReceiverChoice LOG = new ReceiverChoice("A flight log, played as it was flown…", "log");
    private static final ReceiverChoice LOG_FASTER =
            new ReceiverChoice("A flight log, four times as fast, to try it out…", "faster");
    private static final double FASTER = 4;
    private static final ReceiverChoice NONE = new ReceiverChoice("None: by hand and by clock only", "");

    private ReceiverDialog() {}

    /** Takes what was chosen: where positions come from, and how much faster than flown a flight log is played. */
    interface Chosen {
        void use(String where, double faster);
    }

    static void ask(Frame owner, Appearance appearance, List<ReceiverChoice> ports, Chosen chosen) {
        JDialog dialog = OwnWindow.over(owner, "Receiver");
        List<ReceiverChoice> all = new ArrayList<>(ports);
        all.add(LOG);
        all.add(LOG_FASTER);
        all.add(NONE);
        JList<ReceiverChoice> list = new JList<>(all.toArray(ReceiverChoice[]::new));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(0);
        list.setCellRenderer(new Names());
        list.getAccessibleContext().setAccessibleName("Where the aircraft's position comes from");
        list.registerKeyboardAction(
                e -> choose(dialog, list, chosen), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
        JLabel what = new JLabel(
                ports.isEmpty()
                        ? "No serial port was found. Plug the receiver in and open this again."
                        : "The speed of the port is found by itself. Enter chooses, Escape leaves it as it is.");
        JPanel pane = new JPanel(new BorderLayout(0, appearance.px(10)));
        int edge = appearance.px(16);
        pane.setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
        pane.add(what, BorderLayout.NORTH);
        pane.add(new JScrollPane(list));
        OwnWindow.show(dialog, pane, OwnWindow.size(appearance, 640, 360, owner.getSize()));
    }

    private static void choose(JDialog dialog, JList<ReceiverChoice> list, Chosen chosen) {
        ReceiverChoice choice = list.getSelectedValue();
        if (choice == null) {
            return;
        }
        dialog.dispose();
        if (!choice.equals(LOG) && !choice.equals(LOG_FASTER)) {
            chosen.use(choice.where(), 1);
            return;
        }
        JFileChooser files = new JFileChooser();
        files.setDialogTitle("A flight log: NMEA 0183, IGC or GPX");
        if (files.showOpenDialog(dialog.getOwner()) == JFileChooser.APPROVE_OPTION) {
            chosen.use(
                    files.getSelectedFile().toPath().toAbsolutePath().toString(),
                    choice.equals(LOG_FASTER) ? FASTER : 1);
        }
    }

    /** Names of devices are text, never markup. */
    private static final class Names extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1;

        @Override
        public java.awt.Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            putClientProperty("html.disable", true);
            return super.getListCellRendererComponent(
                    list, value instanceof ReceiverChoice choice ? choice.name() : value, index, selected, focused);
        }
    }
}
