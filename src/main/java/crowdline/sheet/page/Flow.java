package crowdline.sheet.page;

import crowdline.sheet.ink.Ink;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;

/**
 * Fills pages from the top, one after the other: what does not fit goes on on the next, line by line. Nothing is left out and
 * nothing is set smaller.
 */
public final class Flow {
    private static final double SIGN_ROOM = 1.25;

    private final PaperSize size;
    private final IntFunction<Area> room;
    private final List<Filling> fillings = new ArrayList<>();
    private final List<Bookmark> bookmarks = new ArrayList<>();
    private double y;

    /** What a page is filled with so far. */
    private record Filling(List<Ink> ground, List<Block> blocks) {}

    /** What stands on every page round what flows over it. */
    public interface Frame {
        /**
         * Adds it.
         *
         * @param page which, from 0
         * @param of how many
         */
        void around(int page, int of, List<Ink> ground, List<Block> blocks);
    }

    /** @param room of the page with that number, from 0 */
    public Flow(PaperSize size, IntFunction<Area> room) {
        this.size = size;
        this.room = room;
        newPage();
    }

    /** Goes on on a new page. */
    public void newPage() {
        fillings.add(new Filling(new ArrayList<>(), new ArrayList<>()));
        y = room().y();
    }

    /** Goes on on a new page unless this one is still empty. */
    public void freshPage() {
        if (!isEmpty()) {
            newPage();
        }
    }

    private boolean isEmpty() {
        return y <= room().y();
    }

    /** Where this page may be filled. */
    public Area room() {
        return room.apply(fillings.size() - 1);
    }

    /** How much room is left on this page. */
    public double leftPt() {
        return room().bottom() - y;
    }

    /** White space, none at the head of a page. */
    public void gap(double pt) {
        if (!isEmpty()) {
            y += pt;
        }
    }

    /** Goes on on a new page unless this one has so much room left. */
    public void keep(double pt) {
        if (leftPt() < Math.min(pt, room().height())) {
            freshPage();
        }
    }

    /** How much room words take over the whole width. */
    public double height(String words, Style style) {
        return Lines.of(words, style, room().width()).size() * style.leadingPt();
    }

    /** How much room these take beside each other, the first lines of all on one baseline. */
    public double height(Cell... cells) {
        double first = first(cells);
        return Arrays.stream(cells)
                .mapToDouble(cell -> first
                        - cell.style().ascentPt()
                        + Lines.of(cell.words(), cell.style(), wordsWidth(cell)).size()
                                * cell.style().leadingPt())
                .max()
                .orElse(0);
    }

    private static double first(Cell... cells) {
        return Arrays.stream(cells).mapToDouble(c -> c.style().ascentPt()).max().orElse(0);
    }

    /** Words over the whole width. */
    public void text(String name, String words, Style style) {
        row(new Cell(name, 0, room().width(), words, style));
    }

    /** Words beside each other, each wrapped in its column. */
    public void row(Cell... cells) {
        List<Deque<String>> left = new ArrayList<>();
        for (Cell cell : cells) {
            left.add(new ArrayDeque<>(Lines.of(cell.words(), cell.style(), wordsWidth(cell))));
        }
        double tallest = Arrays.stream(cells)
                .mapToDouble(c -> c.style().leadingPt())
                .max()
                .orElse(0);
        double first = first(cells);
        boolean begun = false;
        while (left.stream().anyMatch(lines -> !lines.isEmpty())) {
            if (leftPt() < tallest && !isEmpty()) {
                newPage();
            }
            double top = y;
            for (int i = 0; i < cells.length; i++) {
                y = Math.max(y, column(cells[i], left.get(i), top, first, begun));
            }
            begun = true;
        }
    }

    private static double wordsWidth(Cell cell) {
        return cell.width()
                - (cell.sign() == null ? 0 : SIGN_ROOM * cell.style().sizePt());
    }

    /** As many lines of a column as fit, the first of all cells on one baseline; returns where they end. */
    private double column(Cell cell, Deque<String> lines, double top, double first, boolean begun) {
        Style style = cell.style();
        double baseline = top + first;
        double bottom = top;
        List<Ink> inks = new ArrayList<>();
        double left = room().x() + cell.x();
        double indent = cell.width() - wordsWidth(cell);
        double drop = first - style.ascentPt();
        while (!lines.isEmpty()) {
            double end = baseline - style.ascentPt() + style.leadingPt();
            if (end > room().bottom() + 0.01 && !(inks.isEmpty() && isEmpty())) {
                break;
            }
            if (cell.sign() != null && !begun && inks.isEmpty()) {
                double sign = style.sizePt() * 0.66;
                inks.addAll(cell.sign().at(left + sign / 2 + 0.5, baseline - style.sizePt() * 0.36, sign, style.rgb()));
            }
            Ink.Anchor anchor = cell.atRight() ? Ink.Anchor.END : Ink.Anchor.START;
            double x = cell.atRight() ? left + cell.width() : left + indent;
            inks.add(new Ink.Words(
                    lines.removeFirst(), x, baseline, style.sizePt(), style.strong(), anchor, style.rgb()));
            bottom = end;
            baseline += style.leadingPt();
        }
        if (!inks.isEmpty()) {
            double from = top + drop;
            blocks().add(new Block(cell.name(), new Area(left, from, cell.width(), bottom - from), inks));
        }
        return bottom;
    }

    /** A line over the whole width, with as much room as it is thick; none at the head of a page. */
    public void rule(int rgb, double thickPt) {
        if (isEmpty()) {
            return;
        }
        ground().add(Ink.rectangle(room().x(), y, room().width(), thickPt, rgb));
        y += thickPt;
    }

    /**
     * A picture that goes on a new page if there is no room for it.
     *
     * @param drawn what it is drawn with, in the area it gets
     */
    public void picture(String name, double x, double width, double height, Function<Area, List<Ink>> drawn) {
        keep(height);
        Area area = new Area(room().x() + x, y, width, height);
        blocks().add(new Block(name, area, drawn.apply(area)));
        y += height;
    }

    /** Goes back up on this page, to fill another column from there. */
    public double at() {
        return y;
    }

    /** Goes on from there on this page. */
    public void goOnFrom(double otherY) {
        y = otherY;
    }

    /** Which page it is on, from 0. */
    public int page() {
        return fillings.size() - 1;
    }

    /** A mark in the file that leads here. */
    public void bookmark(String words, int level) {
        bookmarks.add(new Bookmark(words, page(), level));
    }

    private List<Block> blocks() {
        return fillings.get(fillings.size() - 1).blocks();
    }

    private List<Ink> ground() {
        return fillings.get(fillings.size() - 1).ground();
    }

    /** All pages, each in its frame. */
    public Pages pages(String title, Frame frame) {
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < fillings.size(); i++) {
            List<Ink> ground = new ArrayList<>(fillings.get(i).ground());
            List<Block> blocks = new ArrayList<>(fillings.get(i).blocks());
            frame.around(i, fillings.size(), ground, blocks);
            pages.add(new Page(size, ground, blocks));
        }
        return new Pages(title, pages, bookmarks);
    }
}
