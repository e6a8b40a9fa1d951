package crowdline.console.theme;

/** What a text is for; a theme gives each role a size. */
public enum TextRole {
    /** The name of the figure being flown. */
    FIGURE,
    /** What to look for. */
    LOOK,
    /** The remark to say now. */
    REMARK,
    /** The next figure's name. */
    NEXT,
    /** The next figure's call, and words of that weight. */
    READ,
    /** Values in the strip and beside bars. */
    VALUE,
    /** Facts to take, figures after the next. */
    SMALL,
    /** Labels over values. */
    LABEL,
    /** Menus, tables, buttons. */
    BODY
}
