/**
 * The review as one page that an owner reads, prints or mails.
 *
 * <p>In: {@link benchtrue.nightly.Review} and its pictures. Out: {@code review.html}: the five answers of the methods, then
 * the evidence, then the figures; no script, no request, light and dark. Text from exports is escaped everywhere. Refused:
 * nothing; what the shop's files can't tell is a sentence, never a zero.
 */
package benchtrue.page;
