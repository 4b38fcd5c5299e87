/**
 * What each paper of a job says: site plan, profile, gate shop drawing, cut and drill list, stake-out, order, crew sheet, proposal,
 * calculation book, care card. Words and numbers only; how they look is decided in {@code drawing} and {@code typeset}.
 *
 * <p>Read {@link plumbleaf.documents.packet.PacketSubject}, then any paper.
 */
@NullMarked
package plumbleaf.documents.packet;

import org.jspecify.annotations.NullMarked;
