namespace FieldCheck.CommandLine.Completion;

/// <summary>Completion for PowerShell, 5.0 and later. Where nothing is proposed the shell proposes files by itself.</summary>
internal static class PowerShellCompletion
{
    internal static string Script() => $$"""
        # Completion of fieldcheck for PowerShell, made by: fieldcheck completion powershell
        Register-ArgumentCompleter -Native -CommandName fieldcheck -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $words = @($commandAst.CommandElements | Select-Object -Skip 1 |
                Where-Object { $_.Extent.EndOffset -lt $cursorPosition } | ForEach-Object { $_.Extent.Text })
            $command = ''
            $isValue = $false
            foreach ($word in $words) {
                if ($isValue) { $isValue = $false }
                elseif (@({{Quoted(CompletionScript.Valued)}}) -contains $word) { $isValue = $true }
                elseif (-not $word.StartsWith('-')) { $command = $word; break }
            }
            $before = ''
            if ($words.Count -gt 0) { $before = $words[-1] }
            $found = @()
        {{CompletionScript.OfChoices.Lines(option => $"    if ($before -eq '{option.Name}') {{ $found = @({Quoted(option.Choices)}) }}")}}
            elseif (@({{Quoted(CompletionScript.Typed.Concat(CompletionScript.OfFiles))}}) -contains $before) { }
            elseif ("$wordToComplete".StartsWith('-')) {
                switch ($command) {
        {{CommandWords.All.Lines(command => $"            '{command}' {{ $found = @({Quoted(CompletionScript.OptionsWith(command))}) }}")}}
                    default { $found = @({{Quoted(CompletionScript.OptionsWith(null))}}) }
                }
            }
            elseif ($command -eq '') { $found = @({{Quoted(CommandWords.All)}}) }
            elseif ($command -eq '{{CommandWords.Completion}}') { $found = @({{Quoted(Shells.All)}}) }
            $found | Where-Object { $_ -like "$wordToComplete*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
        }
        """;

    private static string Quoted(IEnumerable<string> words) => string.Join(", ", words.Select(word => $"'{word}'"));
}
