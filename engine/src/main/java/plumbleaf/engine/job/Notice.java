package plumbleaf.engine.job;

import java.time.LocalDate;

/**
 * A notice that the law of the place asks for so that the right to be paid holds: a preliminary notice, a claim of lien. What is asked, by when and of whom is local
 * law; the days are what the user was told, never ours.
 *
 * @param what it is called there
 * @param days calendar days, the day after the first counted as one
 * @param sent the day it went out, once it has
 */
public record Notice(String what, int days, NoticeFrom from, Stated<LocalDate> sent) {}
