REM Functions for cells of LibreOffice Calc, answered by the Zymase bridge.
REM
REM 1. Tools, Macros, Edit Macros: in "My Macros", library "Standard", make a new
REM    module and put this text into it.
REM 2. Keep the bridge running: go run ./examples/bridge serve -addr {{.Address}}
REM 3. In a cell: ={{with index .Calls 0}}{{.Name}}{{end}}(...)
REM
REM A number is in the unit listed; a text has its own: "55 °F". Inputs may be left
REM out at the end only: the spreadsheet takes an empty place between two
REM semicolons for the number 0. The cell shows the number, or ERROR: and the reason.

Option Explicit

Private Const Z_ADDRESS = "http://{{.Address}}/v1/"
Private z_service As Object
{{range .Calls}}
REM {{.Meaning}}
REM Result: {{.Result}}
{{range .Inputs}}{{range .Notes}}REM   {{.}}
{{end}}{{end}}Function {{.Name}}({{.Parameters}})
	Dim q As String
	q = "{{.Function}}?"{{if .Output}} & "output={{.Output}}&"{{end}}
{{range .Inputs}}	q = q & {{if .Series}}Z_Series{{else}}Z_Input{{end}}("{{.Name}}", {{.Parameter}})
{{end}}	{{.Name}} = {{if .Text}}Z_Text(q){{else}}Z_Ask(q){{end}}
End Function
{{end}}
REM One input of a question; nothing if it was left out.
Private Function Z_Input(v_name As String, Optional v_value) As String
	Dim t As String
	If IsMissing(v_value) Then Exit Function
	If IsArray(v_value) Then
		Z_Input = v_name & "=a+range+of+cells&"
		Exit Function
	End If
	Select Case VarType(v_value)
		Case 2, 3, 4, 5, 6, 14
			REM Str writes a point in every locale.
			t = Trim(Str(v_value))
		Case 8
			t = v_value
		Case Else
			t = ""
	End Select
	Z_Input = v_name & "=" & Z_Escape(t) & "&"
End Function

REM The cells of a range, joined by semicolons, without the empty ones at its end.
Private Function Z_Series(v_name As String, Optional v_value) As String
	Dim t As String
	Dim r As Long
	Dim c As Long
	If IsMissing(v_value) Then Exit Function
	If Not IsArray(v_value) Then
		Z_Series = Z_Input(v_name, v_value)
		Exit Function
	End If
	For r = LBound(v_value, 1) To UBound(v_value, 1)
		For c = LBound(v_value, 2) To UBound(v_value, 2)
			Select Case VarType(v_value(r, c))
				Case 2, 3, 4, 5, 6, 14
					t = t & Trim(Str(v_value(r, c))) & ";"
				Case 8
					t = t & v_value(r, c) & ";"
				Case Else
					t = t & ";"
			End Select
		Next c
	Next r
	Do While Right(t, 1) = ";"
		t = Left(t, Len(t) - 1)
	Loop
	If Len(t) > 0 Then Z_Series = v_name & "=" & Z_Escape(t) & "&"
End Function

REM What stands in an address as it is stays; all else becomes %XX by ENCODEURL.
Private Function Z_Escape(t As String) As String
	Dim i As Integer
	For i = 1 To Len(t)
		If InStr(1, "0123456789.-E", Mid(t, i, 1), 0) = 0 Then
			Z_Escape = Z_Access().callFunction("ENCODEURL", Array(t))
			Exit Function
		End If
	Next i
	Z_Escape = t
End Function

Private Function Z_Access() As Object
	If IsNull(z_service) Then z_service = createUnoService("com.sun.star.sheet.FunctionAccess")
	Z_Access = z_service
End Function

Private Function Z_Ask(q As String)
	Dim a As String
	a = Z_Text(q)
	If Left(a, 6) = "ERROR:" Then
		Z_Ask = a
	Else
		Z_Ask = Val(a)
	End If
End Function

Private Function Z_Text(q As String) As String
	Dim a
	On Error Goto NoAnswer
	a = Z_Access().callFunction("WEBSERVICE", Array(Z_ADDRESS & q))
	If VarType(a) <> 8 Then Goto NoAnswer
	Z_Text = a
	Exit Function
NoAnswer:
	Z_Text = "ERROR: no answer from " & Z_ADDRESS & "; is the bridge running?"
End Function
