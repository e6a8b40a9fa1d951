package crowdline.sheet.page;

/**
 * Where to find something in a file.
 *
 * @param page from 0
 * @param level 0 for an act, 1 for what is in it
 */
public record Bookmark(String words, int page, int level) {}
