package crowdline.console.prepare.field;

import crowdline.console.paint.NamedList;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListModel;
import javax.swing.ListSelectionModel;
import org.jspecify.annotations.Nullable;

/**
 * A list of things with names, of which one is chosen and stays chosen while it is there.
 *
 * @param <T> the things
 */
public final class Choices<T> {
    private final DefaultListModel<T> model = new DefaultListModel<>();
    private final JList<T> list;
    private final Function<T, String> id;
    private final Function<T, String> name;
    private boolean showing;
    private @Nullable String wanted;

    /**
     * @param title for screen readers
     * @param told when another is chosen by hand
     */
    public Choices(String title, Function<T, String> id, Function<T, String> name, Runnable told) {
        this.id = id;
        this.name = name;
        list = new Narrow<>(model, name);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(title);
        list.addListSelectionListener(e -> {
            if (!showing && !e.getValueIsAdjusting()) {
                told.run();
            }
        });
    }

    public JList<T> list() {
        return list;
    }

    public Optional<T> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    public void chooseNext(String next) {
        wanted = next;
    }

    public void show(List<T> things) {
        String next = wanted != null ? wanted : chosen().map(id).orElse("");
        int before = Math.max(0, list.getSelectedIndex());
        showing = true;
        try {
            model.clear();
            model.addAll(things);
            int found = things.stream().map(id).toList().indexOf(next);
            wanted = found < 0 ? wanted : null;
            if (!things.isEmpty()) {
                list.setSelectedIndex(found >= 0 ? found : Math.min(before, things.size() - 1));
            }
        } finally {
            showing = false;
        }
    }

    public void wear(Appearance worn) {
        list.setFont(worn.plain(TextRole.BODY));
        list.setBackground(worn.palette().stage());
        list.setFixedCellHeight(worn.px(36));
        list.setCellRenderer(new Cells(worn.px(10)));
    }

    /** As wide as its window: a name that is too long ends in dots. */
    private static final class Narrow<E> extends NamedList<E> {
        Narrow(ListModel<E> model, Function<E, String> name) {
            super(model, name);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    }

    private final class Cells extends DefaultListCellRenderer {
        private final int gapPx;

        Cells(int gapPx) {
            this.gapPx = gapPx;
        }

        @Override
        @SuppressWarnings("unchecked")
        public Component getListCellRendererComponent(
                JList<?> of, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            PlainText.plain(this);
            Component cell =
                    super.getListCellRendererComponent(of, name.apply((T) value), index, isSelected, cellHasFocus);
            setBorder(BorderFactory.createEmptyBorder(0, gapPx, 0, gapPx));
            return cell;
        }
    }
}
