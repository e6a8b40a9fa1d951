package crowdline.console.paint;

import java.util.function.Function;
import javax.swing.ListModel;

/** A list whose rows are as high as their words: where it gets wider or narrower they are measured anew, which a list does not do by itself. */
public class WordHighList<T> extends NamedList<T> {
    private static final long serialVersionUID = 1;

    /**
     * A list of rows with names.
     *
     * @param name what a row is called, as it is read on the screen
     */
    public WordHighList(ListModel<T> rows, Function<T, String> name) {
        super(rows, name);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isOther = width != getWidth();
        super.setBounds(x, y, width, height);
        if (isOther) {
            setFixedCellHeight(1);
            setFixedCellHeight(-1);
        }
    }
}
