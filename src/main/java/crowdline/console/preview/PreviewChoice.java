package crowdline.console.preview;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.paper.SheetKind;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Written;
import java.awt.Component;
import java.util.List;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Which paper, of which act and variant, in which type. */
final class PreviewChoice extends JPanel {
    private final JList<SheetKind> kinds = new JList<>(SheetKind.values());
    private final JComboBox<String> acts = new JComboBox<>();
    private final JComboBox<String> variants = new JComboBox<>();
    private final JCheckBox large = new JCheckBox("Large type");
    private final transient Show show;
    private final transient Runnable changed;
    private boolean filling;

    PreviewChoice(Appearance appearance, Show show, SheetKind first, Runnable changed) {
        super(new MigLayout("insets 0, gap 0px " + appearance.room(8), "[0:0:,grow,fill]"));
        this.show = show;
        this.changed = changed;
        setOpaque(false);
        kinds.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        kinds.setCellRenderer(new KindCell());
        kinds.setSelectedValue(first, true);
        kinds.setBackground(appearance.palette().stage());
        kinds.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                chosen();
            }
        });
        acts.addItem("Every act");
        show.acts().forEach(act -> acts.addItem(Written.brief(act.title(), 60)));
        acts.addActionListener(e -> {
            fillVariants();
            chosen();
        });
        variants.addActionListener(e -> chosen());
        large.setMnemonic('L');
        large.setOpaque(false);
        large.addActionListener(e -> chosen());
        name(kinds, "Kind of paper");
        name(acts, "Act");
        name(variants, "Variant");
        for (JComponent each : List.of(kinds, acts, variants, large)) {
            each.setFont(appearance.plain(TextRole.SMALL));
            leavePageKeys(each, WHEN_FOCUSED);
            leavePageKeys(each, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        }
        JLabel act = PlainText.plain(new JLabel("Act"));
        act.setFont(appearance.strong(TextRole.LABEL));
        act.setLabelFor(acts);
        JLabel variant = PlainText.plain(new JLabel("Variant"));
        variant.setFont(appearance.strong(TextRole.LABEL));
        variant.setLabelFor(variants);
        add(kinds, "wmin 0, wrap " + appearance.room(16));
        add(act, "wrap 0");
        add(acts, "wmin 0, wrap");
        add(variant, "wrap 0");
        add(variants, "wmin 0, wrap " + appearance.room(12));
        add(large, "wmin 0");
        fillVariants();
        allow();
    }

    /** Leaves the keys that turn pages to whatever holds this. */
    static void leavePageKeys(JComponent component, int when) {
        for (String key : List.of("PAGE_UP", "PAGE_DOWN", "ctrl HOME", "ctrl END")) {
            component.getInputMap(when).put(KeyStroke.getKeyStroke(key), "none");
        }
    }

    private static void name(JComponent component, String name) {
        component.getAccessibleContext().setAccessibleName(name);
    }

    private @Nullable Act act() {
        int chosen = acts.getSelectedIndex();
        return chosen < 1 ? null : show.acts().get(chosen - 1);
    }

    private void fillVariants() {
        filling = true;
        variants.removeAllItems();
        Act act = act();
        if (act != null) {
            act.variants().stream().map(Variant::name).forEach(variants::addItem);
        }
        filling = false;
    }

    private void chosen() {
        if (!filling) {
            allow();
            changed.run();
        }
    }

    private void allow() {
        boolean ofActs = kind().isOfActs();
        acts.setEnabled(ofActs);
        variants.setEnabled(ofActs && variants.getItemCount() > 1);
    }

    SheetKind kind() {
        SheetKind chosen = kinds.getSelectedValue();
        return chosen == null ? SheetKind.CARDS : chosen;
    }

    PaperHost.Asked asked() {
        Act act = kind().isOfActs() ? act() : null;
        int variant = variants.getSelectedIndex();
        return new PaperHost.Asked(
                kind(),
                act == null ? null : act.id(),
                act == null || variant < 0 ? null : act.variants().get(variant).name(),
                large.isSelected());
    }

    void takeFocus() {
        kinds.requestFocusInWindow();
    }

    private static final class KindCell extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            SheetKind kind = (SheetKind) value;
            super.getListCellRendererComponent(list, kind.title(), index, isSelected, cellHasFocus);
            setToolTipText(kind.about());
            getAccessibleContext().setAccessibleName(kind.title() + ". " + kind.about());
            return this;
        }
    }
}
