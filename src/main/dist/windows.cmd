@echo off
rem Makes, on a Windows computer, the program with its own Java and an installer for it:
rem     src\main\dist\windows.cmd
rem Needs a JDK 17 or newer (JAVA_HOME), Maven 3.8 or newer and Node with npm; for the installer also
rem the WiX Toolset, which jpackage calls (version 3; JDK 24 and newer take 4 and 5 too).
rem Leaves target\dist\image\daymount (a folder that runs from anywhere) and target\dist\*.msi.
setlocal
cd /d "%~dp0..\..\.." || exit /b 1
if not exist "%JAVA_HOME%\bin\jpackage.exe" (
  echo JAVA_HOME must name a JDK 17 or newer that has jpackage, was "%JAVA_HOME%"
  exit /b 1
)
call mvn -B -ntp -q -Pdist -DskipTests package || exit /b 1
"target\dist\image\daymount\daymount.exe" --version || exit /b 1
where candle.exe >nul 2>nul || where wix.exe >nul 2>nul || (
  echo The program is in target\dist\image\daymount. No installer was made: the WiX Toolset is not in PATH.
  exit /b 0
)
"%JAVA_HOME%\bin\jpackage.exe" --type msi --app-image "target\dist\image\daymount" --dest "target\dist" ^
  --name Daymount --app-version 0.1.0 --vendor "the Daymount project" --license-file LICENSE ^
  --win-per-user-install --win-menu --win-shortcut --win-dir-chooser ^
  --win-upgrade-uuid 6f1f6b0e-5d0b-4d6e-9a86-2f6d1c0e7a31 || exit /b 1
dir /b "target\dist\*.msi"
