package crowdline.console.prepare.act;

import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.InRows;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Typed;
import crowdline.console.prepare.glance.CloudBase;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Variants;
import crowdline.measure.Measures.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The variants of an act, chosen by hand or by a cloud base; the buttons stand in a panel of their own above it. */
final class VariantBar extends JPanel {
    private final JLabel total = PlainText.plain(new JLabel());
    private final JLabel choice = PlainText.plain(new JLabel(" "));
    private final JTextField cloudBase = TextMenu.on(new JTextField(6));
    private final Fields fields = new Fields();
    private final JTextField name = fields.line("Name of the variant");
    private final JTextField base = fields.line("Lowest cloud base it was agreed for, empty for any, ft");
    private final JButton add = fields.button("New variant");
    private final JButton remove = fields.button("Remove it");
    private final JPanel variants = new JPanel();
    private final transient Tools tools;
    private final transient Consumer<VariantView> chosen;
    private final transient Consumer<String> next;
    private transient Appearance appearance;
    private transient @Nullable ActView act;
    private transient @Nullable VariantView variant;

    /**
     * @param chosen told the variant that is chosen
     * @param next told the name of one to be chosen as soon as it is there
     */
    VariantBar(Appearance appearance, Tools tools, Consumer<VariantView> chosen, Consumer<String> next) {
        this.appearance = appearance;
        this.tools = tools;
        Typed.into(name, this::agree);
        Typed.into(base, this::agree);
        add.addActionListener(e ->
                make((a, v) -> variants().add(a.id(), v.name(), fresh(a), null), act == null ? "" : fresh(act)));
        remove.addActionListener(e -> make((a, v) -> variants().remove(a.id(), v.name()), ""));
        this.chosen = chosen;
        this.next = next;
        cloudBase.getAccessibleContext().setAccessibleName("Cloud base today");
        cloudBase.addActionListener(e -> chooseByCloudBase());
        cloudBase.getDocument().addDocumentListener(new EveryLetter(this::sayCloudBase));
    }

    /** The buttons of the variants, in a line of their own, or more. */
    JPanel buttons() {
        return variants;
    }

    public void show(ActView next) {
        act = next;
        sayCloudBase();
    }

    void choose(VariantView next) {
        variant = next;
        total.setText(next.total());
        name.setText(next.name());
        base.setText(shownBase(next));
        remove.setEnabled(act != null && act.variants().size() > 1);
        fill();
    }

    /** What a press makes of the chosen variant. */
    private interface Making {
        Edit of(ActView act, VariantView variant) throws CannotBe;
    }

    private Variants variants() {
        return tools.host().get().variants();
    }

    /** @param then the name of the variant to choose once it is made; empty for the one that is chosen */
    private void make(Making making, String then) {
        ActView shown = act;
        VariantView of = variant;
        if (shown == null || of == null || !tools.editor().isOpen()) {
            return;
        }
        try {
            tools.editor().make(making.of(shown, of), show -> next.accept(then), () -> choose(of));
        } catch (CannotBe e) {
            tools.editor().refuse(e.why());
            choose(of);
        }
    }

    /** A name that no variant of the act has. */
    private static String fresh(ActView act) {
        List<String> names = act.variants().stream().map(VariantView::name).toList();
        String name = "low";
        for (int i = 2; names.contains(name); i++) {
            name = "low " + i;
        }
        return name;
    }

    private String shownBase(VariantView of) {
        return appearance.measures().shown(Numbers.text(of.minCloudBaseFt()), Dimension.HEIGHT);
    }

    private String meant(JTextField field) {
        return appearance.measures().meant(field.getText(), Dimension.HEIGHT);
    }

    private void agree() {
        VariantView of = variant;
        boolean same = of != null
                && name.getText().strip().equals(of.name())
                && base.getText().strip().equals(shownBase(of));
        if (!same) {
            make(
                    (a, v) -> variants()
                            .agree(a.id(), v.name(), name.getText(), Numbers.read("The cloud base, ft", meant(base))),
                    name.getText().strip());
        }
    }

    public void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        setLayout(new MigLayout("insets 0, gap " + worn.room(10) + " 0", "[0:0:,grow,fill]"));
        total.setForeground(worn.palette().soft());
        choice.setForeground(worn.palette().soft());
        JLabel label = new JLabel(worn.measures().label("Cloud base today, ft"));
        label.setLabelFor(cloudBase);
        // So that the layout asks for its height again once it knows the width.
        variants.putClientProperty("migLayout.dynamicAspectRatio", true);
        fields.wear(worn);
        boolean roomy = Roomy.in(worn);
        String near = ", gapright " + worn.room(4);
        add(fields.over(name, "Variant"), (roomy ? "split 8, growx 0" : "split 5, growx 0") + near);
        add(name, "growx 0, w " + worn.room(96) + "!");
        add(fields.over(base, "from, ft"), "growx 0" + near);
        add(base, "growx 0, w " + worn.room(70) + "!");
        if (!roomy) {
            // What is left of the line; or it would part the fields.
            add(new JLabel(), "wmin 0, growx, wrap");
        }
        add(label, (roomy ? "gapleft " + worn.room(16) : "split 3") + ", growx 0");
        add(cloudBase, "growx 0, w " + worn.room(70) + "!");
        add(choice, "wmin 0, growx" + (roomy ? "" : ", wrap"));
        // Where type is large it has a line of its own, or it would be cut.
        add(total, "wmin 0, growx 0");
        VariantView shown = variant;
        if (shown != null) {
            base.setText(shownBase(shown));
        }
        sayCloudBase();
        fill();
    }

    private void fill() {
        variants.removeAll();
        variants.setLayout(new InRows(appearance.px(4)));
        ButtonGroup group = new ButtonGroup();
        ActView shown = act;
        if (shown != null) {
            for (VariantView each : shown.variants()) {
                JToggleButton button = PlainText.plain(new JToggleButton(each.name() + ", " + each.base()));
                button.setFont(appearance.plain(TextRole.BODY));
                button.setSelected(each.equals(variant));
                button.addActionListener(e -> chosen.accept(each));
                group.add(button);
                button.setToolTipText(PlainText.tip(button.getText()));
                variants.add(button);
            }
        }
        variants.add(add);
        variants.add(remove);
        variants.revalidate();
        variants.repaint();
    }

    private void chooseByCloudBase() {
        ActView shown = act;
        OptionalDouble baseFt = CloudBase.read(meant(cloudBase));
        if (shown != null && baseFt.isPresent()) {
            shown.under(baseFt.getAsDouble()).ifPresent(chosen);
        } else {
            choice.setText(appearance.measures().told(CloudBase.HOW));
        }
    }

    /** At every letter what the base means, as far as it is typed. */
    private void sayCloudBase() {
        ActView shown = act;
        choice.setText(shown == null ? " " : appearance.measures().told(CloudBase.said(shown, meant(cloudBase))));
    }
}
