using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Pages;

/// <summary>Room to sign, for whoever prepared the check and whoever followed it.</summary>
internal static class SignatureBlocks
{
    internal static IEnumerable<RecordBlock> Of(RecordEntry record) =>
    [
        new RecordBlock.Heading(2, "Signed"),
        new RecordBlock.Signatures(
        [
            new("prepared by", TextSafety.ForTerminal(record.PreparedBy ?? "")),
            new("checked by", TextSafety.ForTerminal(record.CheckedBy ?? "")),
        ]),
    ];
}
